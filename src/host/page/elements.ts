/** An element of host.html by its id. A missing one is a fault of ours. */
export function element<Kind extends HTMLElement>(id: string, kind: new () => Kind): Kind {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`host.html has no ${kind.name} "${id}".`);
  return found;
}
