/** How much a quality counts for a role, in the coach's judgement: 0 not at all, 1 as any other, 2 twice as much. */
export type QualityWeight = {
  readonly quality: string;
  readonly role: string;
  readonly weight: number;
};
