/** Plates as gyms have them, in kg, from the heaviest down. */
const usualPlates = [25, 20, 10, 5, 2.5, 1.25, 0.5];

/** Those down to the lightest that the coach has. */
export const platesFrom = (smallest: number): number[] => [
  ...usualPlates.filter((plate) => plate > smallest),
  smallest,
];
