/** What a file keeps of a password: never the word itself. Its attributes as they stand in the file. */
export type FiledPassword = { readonly attributes: Readonly<Record<string, string>> };

/** The word as it was given here ("" for none), or what a file kept of it. */
export type Password = string | FiledPassword;

/**
 * The 16 bits by which files have known passwords since the format began (ECMA-376 part 4, 14.7.1). Any program
 * understands it; it keeps out mistakes, not people.
 */
export function passwordHash(password: string): string {
  let hash = 0;
  const turned = () => ((hash >> 14) & 1) | ((hash << 1) & 0x7fff);
  for (let index = password.length - 1; index >= 0; index -= 1) {
    hash = turned() ^ (password.charCodeAt(index) & 0xff);
  }
  hash = turned() ^ password.length ^ 0xce4b;
  return password === "" ? "" : hash.toString(16).toUpperCase().padStart(4, "0");
}

/** Whether a word is the password. Hashes of newer kinds cannot be judged here: no word fits them. */
export function fits(password: Password, word: string): boolean {
  if (typeof password === "string") return password === word;
  const { password: hash } = password.attributes;
  return hash !== undefined && Number.parseInt(hash, 16) === Number.parseInt(passwordHash(word), 16);
}
