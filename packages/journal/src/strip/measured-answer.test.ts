import { describe, expect, it } from 'vitest';
import type { Fact } from '../facts/index.ts';
import { foldJob } from '../fold/fold-job.ts';
import { entryOf } from '../testing/arbitrary-entries.ts';
import { sealOf } from './seal.ts';
import { stripCheck } from './strip-check.ts';

/** Two wound notes of two strings in one section, and nothing else said. */
const described: Fact[] = [
  { kind: 'job-opened', v: 1, title: 'two notes' },
  { kind: 'piano-described', v: 1, form: 'grand', firstKey: 12, lastKey: 13, referencePitch_hz: 440 },
  {
    kind: 'section-described',
    v: 1,
    section: 'bass',
    firstKey: 12,
    lastKey: 13,
    bridge: 'bass',
    frontTermination: 'agraffe',
  },
  { kind: 'unisons-described', v: 1, firstKey: 12, lastKey: 13, strings: 2, winding: 'wound', layers: 1 },
];
const gapsWith = (...facts: Fact[]) =>
  stripCheck(
    foldJob([...described, ...facts].map((fact, index) => entryOf(index, index + 1, fact))),
  ).gaps.filter(({ name }) => /^(loops|felts|punchings|bars|bearing|windings)\//.test(name));
const names = (...facts: Fact[]) => gapsWith(...facts).map(({ name }) => name);
const sentence = (name: string, ...facts: Fact[]) =>
  gapsWith(...facts).find((gap) => gap.name === name)?.sentence;

const wire = (key: number, joined: 'looped' | 'unknown'): Fact => ({
  kind: 'wire-path',
  v: 1,
  strings: [
    { key, string: 1 },
    { key, string: 2 },
  ],
  joined,
});
const soft = (part: 'felt' | 'punchings' | 'pin bushings', is: 'known' | 'unknown' | 'none'): Fact => ({
  kind: 'soft-part',
  v: 1,
  part,
  section: 'bass',
  answer: { is },
});
const winding = (
  key: number,
  string?: number,
  loopStyle: 'single loop' | 'unknown' = 'single loop',
): Fact => ({
  kind: 'winding-described',
  v: 1,
  key,
  ...(string === undefined ? {} : { string }),
  loopStyle,
  twist: 'right',
});

describe('stripCheck() with measured parts', () => {
  it('asks for everything while nothing is measured', () => {
    expect(names().sort()).toEqual([
      'bars/bass',
      'bearing/bass',
      'felts/bass',
      'loops/bass',
      'punchings/bass',
      'windings/bass',
    ]);
  });

  it('takes the wires of all strings for an answer, and says how many are left before', () => {
    expect(names(wire(12, 'looped'), wire(13, 'looped'))).not.toContain('loops/bass');
    expect(sentence('loops/bass', wire(12, 'looped'))).toContain('2 of 4 strings are not noted');
    expect(sentence('loops/bass', wire(12, 'unknown'), wire(13, 'unknown'))).toContain('somebody looked');
  });

  it('takes a measured soft part, or that there is none, for an answer; unknown and another part are none', () => {
    expect(names(soft('felt', 'known'))).not.toContain('felts/bass');
    expect(names(soft('punchings', 'none'))).not.toContain('punchings/bass');
    expect(sentence('felts/bass', soft('felt', 'unknown'))).toContain('somebody looked');
    expect(names(soft('pin bushings', 'known'))).toContain('punchings/bass');
  });

  it('takes a plate part for the bars', () => {
    const bar: Fact = {
      kind: 'plate-part',
      v: 1,
      part: 'bar 1',
      section: 'bass',
      isMovable: true,
      distances: [{ from: 'first agraffe', distance_m: 0.02 }],
    };
    expect(names(bar)).not.toContain('bars/bass');
  });

  it('takes bearing under load, by note or by section, and not bearing of the bare board', () => {
    const bearing = (place: { key?: number; section?: string }, loaded: boolean): Fact => ({
      kind: 'reading',
      v: 1,
      quantity: 'bearing-rise',
      place,
      value_si: 0.001,
      asRead: { value: 1, unit: 'mm' },
      origin: 'measured',
      stage: 'as found',
      span_m: 0.1,
      loaded,
    });
    expect(names(bearing({ key: 12 }, true))).not.toContain('bearing/bass');
    expect(names(bearing({ section: 'bass' }, true))).not.toContain('bearing/bass');
    expect(names(bearing({ key: 12 }, false))).toContain('bearing/bass');
    expect(names(bearing({ key: 40 }, true))).toContain('bearing/bass');
  });

  it('wants the loop style and twist of every wound note, of the note or of each of its strings', () => {
    expect(sentence('windings/bass')).toContain('G#1 and 1 more');
    expect(names(winding(12), winding(13))).not.toContain('windings/bass');
    expect(names(winding(12), winding(13, 1), winding(13, 2))).not.toContain('windings/bass');
    expect(sentence('windings/bass', winding(12), winding(13, 1))).toContain('of A1 in');
    expect(names(winding(12), winding(13, undefined, 'unknown'))).toContain('windings/bass');
  });
});

describe('foldJob() with damage found after the strip', () => {
  const damage: Fact = {
    kind: 'damage-found',
    v: 1,
    place: { section: 'bass' },
    what: 'a crack in the bridge cap',
    gravity: 'mend before stringing',
    whatToDo: 'recap the bridge',
    reason: 'it lay under the strings',
  };

  it('lists it, and does not take it for an amendment of the sealed record', () => {
    const before = described.map((fact, index) => entryOf(index, index + 1, fact));
    const seal: Fact = { kind: 'sealed', v: 1, ...sealOf(before) };
    const after = [seal, damage].map((fact, index) => entryOf(10 + index, 10 + index, fact));
    const job = foldJob([...before, ...after]);
    expect(job.damages.map(({ what }) => what)).toEqual(['a crack in the bridge cap']);
    expect(job.amendments).toEqual([]);
  });
});
