import { describe, expect, it } from 'vitest';
import type { Fact } from '../facts/index.ts';
import { foldJob } from '../fold/fold-job.ts';
import { entryOf, wireReading } from '../testing/arbitrary-entries.ts';
import { loopMap } from './loop-map.ts';

/** Three notes of three strings: nine strings, an odd count, then one note of a second section. */
const piano: Fact[] = [
  { kind: 'job-opened', v: 1, title: 'loops' },
  { kind: 'piano-described', v: 1, form: 'grand', firstKey: 40, lastKey: 43, referencePitch_hz: 440 },
  {
    kind: 'section-described',
    v: 1,
    section: 'tenor',
    firstKey: 40,
    lastKey: 42,
    bridge: 'treble',
    frontTermination: 'agraffe',
  },
  {
    kind: 'section-described',
    v: 1,
    section: 'treble',
    firstKey: 43,
    lastKey: 43,
    bridge: 'treble',
    frontTermination: 'capo',
  },
  { kind: 'unisons-described', v: 1, firstKey: 40, lastKey: 43, strings: 3, winding: 'plain', layers: 0 },
];
const names = ['40/1', '40/2', '40/3', '41/1', '41/2', '41/3', '42/1', '42/2', '42/3'];
function wire(joined: 'looped' | 'tied', ...places: string[]): Fact {
  const strings = places.map((place) => ({
    key: Number(place.split('/')[0]),
    string: Number(place.split('/')[1]),
  }));
  return { kind: 'wire-path', v: 1, strings, joined };
}
/** Loops from the bass on, straddling notes, the last string tied. */
const sound: Fact[] = [
  ...[0, 2, 4, 6].map((first) => wire('looped', names[first]!, names[first + 1]!)),
  wire('tied', names[8]!),
];
const kinds = (facts: readonly Fact[]) =>
  loopMap(foldJob([...piano, ...facts].map((fact, index) => entryOf(index, index + 1, fact)))).questions.map(
    ({ kind }) => kind,
  );

describe('loopMap()', () => {
  it('counts looped and tied strings and asks nothing of a sound section', () => {
    const { sections, questions } = loopMap(
      foldJob([...piano, ...sound].map((fact, index) => entryOf(index, index + 1, fact))),
    );
    expect(questions).toEqual([]);
    expect(sections[0]).toEqual({ section: 'tenor', strings: 9, looped: 8, tied: 1, unsaid: [] });
  });

  it('asks about an odd count without a tie', () => {
    // Nine strings that are all said to be looped cannot be: one of the wires is noted over a string of another pair.
    const facts = [...sound.slice(0, 4), wire('looped', '42/3', '43/1')];
    expect(kinds(facts)).toEqual(
      expect.arrayContaining(['loop across two sections', 'odd count without a tie']),
    );
  });

  it('asks about strings that are not neighbours, and about a string without a wire', () => {
    expect(kinds([wire('looped', '40/1', '40/3')])).toEqual([
      'loop between strings that are not neighbours',
      'string without a wire',
    ]);
  });

  it('asks about one wire that reads two sizes', () => {
    const facts = [...sound, wireReading(40, 0.00104), wireReading(41, 0.00099)];
    expect(kinds(facts)).toEqual(['one wire, two sizes']);
  });

  it('asks about a wire on a string that is not described, and a hitch pin with two wires', () => {
    const pinned = sound.map((fact, index) => (index < 2 ? { ...fact, hitchPin: '7' } : fact)) as Fact[];
    expect(kinds(pinned)).toEqual(['hitch pin with two wires']);
    expect(kinds([...sound, wire('tied', '39/1')])).toEqual(['string that is not there']);
  });

  it('asks about numbered hitch pins that cross, and about one that no wire names', () => {
    const pinned = (...pins: string[]): Fact[] =>
      sound.map((fact, index) => ({ ...fact, hitchPin: pins[index] }) as Fact);
    expect(kinds(pinned('1', '2', '3', '4', '5'))).toEqual([]);
    // Counted from the treble they run the other way, and are as sound.
    expect(kinds(pinned('5', '4', '3', '2', '1'))).toEqual([]);
    expect(kinds(pinned('1', '3', '2', '4', '5'))).toEqual(['hitch pins out of order']);
    expect(kinds(pinned('1', '2', '4', '5', '6'))).toEqual(['hitch pin left out']);
    // Names that are no numbers have no order.
    expect(kinds(pinned('by the strut', 'b', 'a', 'd', 'c'))).toEqual([]);
  });

  it('takes a wire round two pins for one wire on each', () => {
    const pins = [['1', '2'], ['3'], ['4'], ['5'], ['6']];
    const pinned = sound.map((fact, index) => {
      const [hitchPin, otherHitchPin] = pins[index]!;
      return { ...fact, hitchPin, ...(otherHitchPin === undefined ? {} : { otherHitchPin }) } as Fact;
    });
    expect(kinds(pinned)).toEqual([]);
    const doubled = pinned.map((fact, index) => (index === 1 ? ({ ...fact, hitchPin: '2' } as Fact) : fact));
    expect(kinds(doubled)).toContain('hitch pin with two wires');
  });

  it('puts what was noted of a wire beside its question, and tells sizes in the unit asked for', () => {
    const facts = [
      { ...wire('looped', '40/1', '40/3'), note: 'tied over by a predecessor' } as Fact,
      wire('looped', '41/1', '42/1'),
      wireReading(41, 0.00104),
      wireReading(42, 0.00099),
    ];
    const job = foldJob([...piano, ...facts].map((fact, index) => entryOf(index, index + 1, fact)));
    const { questions } = loopMap(job, { lengthUnit: 'in' });
    expect(questions[0]).toMatchObject({
      kind: 'loop between strings that are not neighbours',
      noted: 'tied over by a predecessor',
    });
    // 1.04 mm / 25.4 = 0.04094 in
    expect(questions.find(({ kind }) => kind === 'one wire, two sizes')?.sentence).toContain('0.0409 in');
  });

  it('lets a later path of a string stand in place of an earlier one', () => {
    const facts = [wire('looped', '40/1', '40/3'), ...sound];
    expect(kinds(facts)).toEqual([]);
  });
});
