/**
 * Mean concentric velocity (m/s) at which one repetition is just possible, by exercise. An athlete's own threshold,
 * measured at a tested maximum, is better than any of these.
 */
export const minimumVelocityThresholds = [
  {
    exercise: "bench press",
    metresPerSecond: 0.17,
    source:
      "Gonzalez-Badillo & Sanchez-Medina 2010, Int J Sports Med 31:347-352 (from memory; as used in doi 10.3233/IES-202247, abstract read)",
  },
  {
    exercise: "back squat",
    metresPerSecond: 0.3,
    source: "Dello Stritto et al. 2025, Sports 13:224 (abstract read, which uses 0.3 and 0.4; others print 0.32)",
  },
  { exercise: "deadlift", metresPerSecond: 0.15, source: "from memory" },
  { exercise: "prone bench pull", metresPerSecond: 0.5, source: "from memory" },
] as const;
