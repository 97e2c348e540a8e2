import { mils } from '@becket/core';
import type { ProposedNote } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { nudgedNote } from './nudge-note.ts';

// US sizes 14, 14½ and 15 are 0.033, 0.034 and 0.035 in: see core/tables/us-wire-sizes.
const plain = { winding: 'plain', key: 60, gauge_m: mils(34), from: 'computed' } as const;
const wound: Extract<ProposedNote, { winding: 'wound' }> = {
  winding: 'wound',
  key: 5,
  core_m: mils(45),
  layers: [
    { wire_m: 0.0005, bareFront_m: 0.02, bareBack_m: 0.02 },
    { wire_m: 0.001, bareFront_m: 0.03, bareBack_m: 0.03 },
  ],
  from: 'as found',
};

describe('nudgedNote()', () => {
  it('goes to the next size and back, and says that a hand did it', () => {
    const thicker = nudgedNote(plain, { wire: 'plain', by: 1, wires: 'US' })!;
    expect(thicker).toMatchObject({ gauge_m: mils(35), from: 'by hand' });
    expect(nudgedNote(thicker, { wire: 'plain', by: -1, wires: 'US' })).toMatchObject({
      gauge_m: plain.gauge_m,
    });
  });

  it('goes from between two sizes to the nearer end of each side', () => {
    const worn = { ...plain, gauge_m: mils(33.6) };
    expect(nudgedNote(worn, { wire: 'plain', by: 1, wires: 'US' })).toMatchObject({ gauge_m: mils(34) });
    expect(nudgedNote(worn, { wire: 'plain', by: -1, wires: 'US' })).toMatchObject({
      gauge_m: mils(33),
    });
  });

  it('changes the core or the outermost winding, and nothing else', () => {
    const outer = nudgedNote(wound, { wire: 'winding', by: 1, wires: 'US' })!;
    expect(outer).toMatchObject({ core_m: wound.core_m, layers: [wound.layers[0], { bareFront_m: 0.03 }] });
    if (outer.winding !== 'wound') throw new Error('it stays wound');
    expect(outer.layers[1]!.wire_m).toBeGreaterThan(0.001);
    const core = nudgedNote(wound, { wire: 'core', by: -1, wires: 'US' })!;
    expect(core).toMatchObject({ layers: wound.layers });
  });

  it('has nothing for a wire that is not there, or beyond the last size', () => {
    expect(nudgedNote(plain, { wire: 'core', by: 1, wires: 'US' })).toBeUndefined();
    expect(nudgedNote(wound, { wire: 'plain', by: 1, wires: 'US' })).toBeUndefined();
    expect(nudgedNote({ ...plain, gauge_m: 0.005 }, { wire: 'plain', by: 1, wires: 'US' })).toBeUndefined();
  });
});
