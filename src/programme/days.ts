const millisecondsOfDay = 86_400_000;

/** Whole days since 1970-01-01 of an ISO day. */
export const dayNumber = (isoDay: string): number => Math.round(Date.parse(`${isoDay}T00:00:00Z`) / millisecondsOfDay);

export const isoDay = (day: number): string => new Date(day * millisecondsOfDay).toISOString().slice(0, 10);

/** The Monday of the week in which a day lies, ISO. 1970-01-01 was a Thursday. */
export const mondayOf = (day: string): string => {
  const number = dayNumber(day);
  return isoDay(number - ((((number + 3) % 7) + 7) % 7));
};
