const millisecondsOfDay = 86_400_000;

/** Whole days since 1970-01-01 of an ISO day. */
export const dayNumber = (day: string): number => Math.round(Date.parse(`${day}T00:00:00Z`) / millisecondsOfDay);

export const isoDay = (number: number): string => new Date(number * millisecondsOfDay).toISOString().slice(0, 10);

/** The Monday of the week in which a day lies, ISO. 1970-01-01 was a Thursday. */
export const mondayOf = (day: string): string => {
  const number = dayNumber(day);
  return isoDay(number - ((((number + 3) % 7) + 7) % 7));
};

/** Serial number of 1970-01-01 where the sheet counts days from 1900 on (and holds a 29 February 1900). */
const serialOf1970 = 25_569;

/** The number by which the sheet keeps an ISO day. */
export const daySerial = (day: string): number => dayNumber(day) + serialOf1970;

/** The ISO day of a serial number, whatever the time of day behind it. */
export const dayOfSerial = (serial: number): string => isoDay(Math.floor(serial) - serialOf1970);
