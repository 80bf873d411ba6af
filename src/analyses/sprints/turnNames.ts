/** Whether a test's name means the 505: five metres in, a turn of 180 degrees, five metres back, timed by one gate. */
export const isTurnTest = (test: string): boolean =>
  / (505|5 0 5) /.test(` ${(test.toLowerCase().match(/\p{L}+|\p{N}+/gu) ?? []).join(" ")} `);
