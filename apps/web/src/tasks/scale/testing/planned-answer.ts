/** A plain string of a planned scale. */
export const plain = (key: number, gauge_m: number) =>
  ({ winding: 'plain', key, gauge_m, from: 'computed' }) as const;

/** An answer of two notes, the wire of both of this gauge. */
export const answer = (name: string, gauge_m: number) => ({
  name,
  notes: [plain(49, gauge_m), plain(50, gauge_m)],
  changedNotes: 1,
  plainSizeChanges: 2,
  tiedStrings: 3,
  tensionUnevenness: 0.0123,
  inharmonicityUnevenness: 0.02,
  isProved: true,
  mostBetter: 0,
  loadChange_n: 0,
  reasonsAgainst: ['its age is not known'],
});
