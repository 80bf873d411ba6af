/**
 * Acceleration of gravity in m/s^2: 9.81 as sport science prints it, or the standard value 9.80665 (ISO 80000-3, from memory).
 * The choice moves a jump height by 0.034 %; keep one for a whole table and print it.
 */
export type Gravity = 9.81 | 9.80665;

export const customaryGravity: Gravity = 9.81;
