/** Something to be found: what it is called, what it says, and other words that people know it by. */
export type Searchable = { readonly title: string; readonly text: string; readonly alsoFoundBy: string };

/**
 * Everything in which each word of the query stands, at the start of a word or within one; what is called so comes
 * first, then what is told so. Case and accents do not count.
 */
export function found<Item extends Searchable>(items: readonly Item[], query: string): Item[] {
  const wanted = plain(query)
    .split(/\s+/)
    .filter((word) => word !== "");
  if (wanted.length === 0) return [];
  const ranked = items.flatMap((item) => {
    const title = plain(item.title);
    const everything = `${title} ${plain(item.text)} ${plain(item.alsoFoundBy)}`;
    if (!wanted.every((word) => everything.includes(word))) return [];
    const rank = wanted.every((word) => ` ${title}`.includes(` ${word}`)) ? 0 : title.includes(wanted[0]!) ? 1 : 2;
    return [{ item, rank }];
  });
  return ranked.sort((a, b) => a.rank - b.rank).map(({ item }) => item);
}

const plain = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
