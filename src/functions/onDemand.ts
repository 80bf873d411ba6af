type Subject = Readonly<Record<string, (...given: any[]) => unknown>>;

/**
 * A custom function whose file is fetched when it is first called. That one call answers a moment later, and the cell shows that it
 * is busy; all others answer at once. A file that could not be fetched is asked for again by the next call.
 */
export function onDemand(fetchFile: () => Promise<Subject>, name: string): (...given: unknown[]) => unknown {
  let fetched: Subject | undefined;
  return (...given) => {
    if (fetched) return fetched[name]!(...given);
    return fetchFile().then((subject) => {
      fetched = subject;
      return subject[name]!(...given);
    });
  };
}
