import { makeLanguage } from '@becket/core';
import { describe, expect, it } from 'vitest';
import type { Entry } from '../entry.ts';
import type { Fact } from '../facts/index.ts';
import type { Place } from '../facts/place.ts';
import type { ReadUnit } from '../facts/read-units.ts';
import type { ReadingQuantityName } from '../facts/reading-quantities.ts';
import { foldJob } from '../fold/fold-job.ts';
import { german } from '../german.ts';
import { entryOf, ulidFrom, wireReading } from '../testing/arbitrary-entries.ts';
import { isSealIntact, sealOf } from './seal.ts';
import { stripCheck } from './strip-check.ts';

/** Three plain notes in one section, everything of the section noted; no wire or length read yet. */
const described: Fact[] = [
  { kind: 'job-opened', v: 1, title: 'three notes' },
  { kind: 'piano-described', v: 1, form: 'grand', firstKey: 40, lastKey: 42, referencePitch_hz: 440 },
  {
    kind: 'section-described',
    v: 1,
    section: 'tenor',
    firstKey: 40,
    lastKey: 42,
    bridge: 'treble',
    frontTermination: 'agraffe',
  },
  { kind: 'unisons-described', v: 1, firstKey: 40, lastKey: 42, strings: 3, winding: 'plain', layers: 0 },
  ...(
    ['loops', 'bearing', 'felts', 'punchings', 'bars', 'dampers', 'spacing', 'hitch-pins', 'stamps'] as const
  ).map(
    (thing): Fact => ({
      kind: 'observation',
      v: 1,
      thing,
      place: {},
      answer: { is: 'known', text: 'as drawn' },
    }),
  ),
  {
    kind: 'reading-absent',
    v: 1,
    quantity: 'pin-diameter',
    place: { section: 'tenor' },
    answer: 'does not apply',
  },
  { kind: 'reading-absent', v: 1, quantity: 'front-length', place: { section: 'tenor' }, answer: 'none' },
  { kind: 'reading-absent', v: 1, quantity: 'back-length', place: { section: 'tenor' }, answer: 'none' },
  ...(['pin-length', 'pin-height', 'pin-coils'] as const).map(
    (quantity): Fact => ({
      kind: 'reading-absent',
      v: 1,
      quantity,
      place: { section: 'tenor' },
      answer: 'none',
    }),
  ),
  ...(['relative-humidity', 'temperature'] as const).map(
    (quantity): Fact => ({ kind: 'reading-absent', v: 1, quantity, place: {}, answer: 'none' }),
  ),
  { kind: 'reading-absent', v: 1, quantity: 'pitch-offset', place: {}, answer: 'does not apply' },
  { kind: 'reading-absent', v: 1, quantity: 'soundboard-crown', place: {}, answer: 'none' },
];
const length = (key: number): Fact => ({
  kind: 'reading',
  v: 1,
  quantity: 'speaking-length',
  place: { key },
  value_si: 0.62,
  asRead: { value: 620, unit: 'mm' },
  origin: 'measured',
  stage: 'as found',
});
const readings: Fact[] = [40, 41, 42].flatMap((key) => [wireReading(key, 0.001), length(key)]);
const journal = (facts: readonly Fact[]): Entry[] =>
  facts.map((fact, index) => entryOf(index, index + 1, fact));
const openNames = (facts: readonly Fact[]): string[] =>
  stripCheck(foldJob(journal(facts))).openGaps.map(({ name }) => name);

describe('stripCheck()', () => {
  it('passes when every note and every section has its answer', () => {
    expect(openNames([...described, ...readings])).toEqual([]);
    expect(stripCheck(foldJob(journal([...described, ...readings]))).isPassed).toBe(true);
  });

  it('names each missing reading by quantity and note', () => {
    expect(openNames([...described, ...readings.slice(0, 3)])).toEqual([
      'speaking-length/C#4',
      'wire-diameter/D4',
      'speaking-length/D4',
    ]);
  });

  it('does not take unknown for an answer, and takes none and does-not-apply for one', () => {
    const answered = (answer: 'unknown' | 'none' | 'does not apply'): Fact[] => [
      ...described,
      ...readings.slice(0, 5),
      { kind: 'reading-absent', v: 1, quantity: 'speaking-length', place: { key: 42 }, answer },
    ];
    expect(openNames(answered('unknown'))).toEqual(['speaking-length/D4']);
    expect(openNames(answered('none'))).toEqual([]);
    expect(openNames(answered('does not apply'))).toEqual([]);
  });

  it('says in its sentence that somebody looked in vain', () => {
    const facts: Fact[] = [
      ...described,
      ...readings.slice(0, 5),
      { kind: 'reading-absent', v: 1, quantity: 'speaking-length', place: { key: 42 }, answer: 'unknown' },
    ];
    expect(stripCheck(foldJob(journal(facts))).openGaps[0]?.sentence).toContain('somebody looked');
  });

  it('takes a gap that was accepted by name and reason as closed, and still lists it', () => {
    const facts: Fact[] = [
      ...described,
      ...readings.slice(0, 5),
      { kind: 'gap-accepted', v: 1, gap: 'speaking-length/D4', reason: 'the string was missing' },
    ];
    const check = stripCheck(foldJob(journal(facts)));
    expect(check.isPassed).toBe(true);
    expect(check.gaps.map(({ accepted }) => accepted?.reason)).toEqual(['the string was missing']);
  });

  it('puts what is lost for ever first', () => {
    const { gaps } = stripCheck(foldJob(journal(described.slice(0, 4))));
    const ranks = gaps.map(({ rank }) => rank);
    expect(ranks).toEqual([...ranks].sort((a, b) => order.indexOf(a) - order.indexOf(b)));
    expect(new Set(ranks).size).toBe(3);
  });

  it('asks for the spacing at both places until they are read, or told in words', () => {
    const withoutSpacing = [...described, ...readings].filter(
      (fact) => !(fact.kind === 'observation' && fact.thing === 'spacing'),
    );
    const spacing = (quantity: 'strike-line-spacing' | 'bridge-spacing'): Fact => ({
      kind: 'reading',
      v: 1,
      quantity,
      place: { key: 41 },
      value_si: 0.013,
      asRead: { value: 13, unit: 'mm' },
      origin: 'measured',
      stage: 'as found',
    });
    expect(openNames(withoutSpacing)).toEqual(['strike-line-spacing/tenor', 'bridge-spacing/tenor']);
    expect(openNames([...withoutSpacing, spacing('strike-line-spacing')])).toEqual(['bridge-spacing/tenor']);
    expect(openNames([...withoutSpacing, spacing('strike-line-spacing'), spacing('bridge-spacing')])).toEqual(
      [],
    );
  });

  it('asks for the height of a pressure bar where there is one, and for the order of the dampers', () => {
    const barred = [...described, ...readings].map(
      (fact): Fact =>
        fact.kind === 'section-described' ? { ...fact, frontTermination: 'pressure bar' } : fact,
    );
    expect(openNames(barred)).toEqual(['pressure-bar-height/tenor']);
    const height: Fact = {
      kind: 'reading',
      v: 1,
      quantity: 'pressure-bar-height',
      place: { section: 'tenor', point: 'at the left screw' },
      value_si: 0.012,
      asRead: { value: 12, unit: 'mm' },
      origin: 'measured',
      stage: 'as found',
    };
    expect(openNames([...barred, height])).toEqual([]);
    const withoutDampers = [...described, ...readings].filter(
      (fact) => !(fact.kind === 'observation' && fact.thing === 'dampers'),
    );
    expect(openNames(withoutDampers)).toEqual(['dampers/tenor']);
  });

  it('asks once for the pitch as found and for the crown under load, which the survey may have told in words', () => {
    const without = (quantity: string) =>
      [...described, ...readings].filter(
        (fact) => !(fact.kind === 'reading-absent' && fact.quantity === quantity),
      );
    const read = { kind: 'reading', v: 1, origin: 'measured', stage: 'as found' } as const;
    expect(openNames(without('pitch-offset'))).toEqual(['pitch-offset/piano']);
    const pitch: Fact = {
      ...read,
      quantity: 'pitch-offset',
      place: { key: 49 },
      value_si: -64,
      asRead: { value: -64, unit: 'cents' },
    };
    expect(openNames([...without('pitch-offset'), pitch])).toEqual([]);
    const crown = (loaded: boolean): Fact => ({
      ...read,
      quantity: 'soundboard-crown',
      place: { section: 'tenor' },
      value_si: 0.0015,
      asRead: { value: 1.5, unit: 'mm' },
      span_m: 1.1,
      loaded,
    });
    expect(openNames([...without('soundboard-crown'), crown(false)])).toEqual(['soundboard-crown/piano']);
    expect(openNames([...without('soundboard-crown'), crown(true)])).toEqual([]);
    const survey = (is: 'sound' | 'could not be seen'): Fact => ({
      kind: 'finding',
      v: 1,
      thing: 'board-crown',
      place: {},
      answer: { is },
    });
    expect(openNames([...without('soundboard-crown'), survey('could not be seen')])).toEqual([
      'soundboard-crown/piano',
    ]);
    expect(openNames([...without('soundboard-crown'), survey('sound')])).toEqual([]);
  });

  it('asks where the winding starts and how long it is in a section that has wound strings', () => {
    const wound = [...described, ...readings].map(
      (fact): Fact =>
        fact.kind === 'unisons-described' ? { ...fact, winding: 'wound', layers: 1, strings: 1 } : fact,
    );
    const open = openNames(wound).filter((name) => name.endsWith('/tenor'));
    expect(open).toContain('loop-to-winding/tenor');
    expect(open).toContain('winding-length/tenor');
    const start: Fact = {
      kind: 'reading',
      v: 1,
      quantity: 'loop-to-winding',
      place: { key: 41, string: 1 },
      value_si: 0.12,
      asRead: { value: 120, unit: 'mm' },
      origin: 'measured',
      stage: 'as found',
    };
    expect(openNames([...wound, start])).not.toContain('loop-to-winding/tenor');
  });

  it('asks for the air, and for length, height and coils of a pin in each section', () => {
    const asked = ['pin-length', 'pin-height', 'pin-coils', 'relative-humidity', 'temperature'];
    const without = [...described, ...readings].filter(
      (fact) => !(fact.kind === 'reading-absent' && asked.includes(fact.quantity)),
    );
    expect(openNames(without)).toEqual([
      'pin-height/tenor',
      'relative-humidity/piano',
      'temperature/piano',
      'pin-length/tenor',
      'pin-coils/tenor',
    ]);
    const read = (quantity: ReadingQuantityName, place: Place, value_si: number, unit: ReadUnit): Fact => ({
      kind: 'reading',
      v: 1,
      quantity,
      place,
      value_si,
      asRead: { value: value_si, unit },
      origin: 'measured',
      stage: 'as found',
    });
    expect(
      openNames([
        ...without,
        read('pin-height', { key: 41 }, 0.02, 'm'),
        read('pin-length', { key: 40 }, 0.0635, 'm'),
        read('pin-coils', { key: 42 }, 3, 'turns'),
        read('relative-humidity', {}, 41, '%'),
        read('temperature', {}, 20, '°C'),
      ]),
    ).toEqual([]);
  });

  it('asks for hitch pins and stamps as for the other things that are seen', () => {
    const without = (thing: string) =>
      [...described, ...readings].filter((fact) => !(fact.kind === 'observation' && fact.thing === thing));
    expect(openNames(without('stamps'))).toEqual(['stamps/tenor']);
    expect(openNames(without('hitch-pins'))).toEqual(['hitch-pins/tenor']);
  });

  it('fails while the piano is not described', () => {
    expect(openNames(described.slice(0, 1))).toEqual(['piano']);
  });
});
const order = ['lost for ever', 'costly', 'convenient'];

describe('the seal', () => {
  const sealed = journal([...described, ...readings]);
  const seal = sealOf(sealed);

  it('covers the as-found facts, in journal order, and is the same however the entries are ordered', () => {
    expect(seal.entries).toBe(described.length - 1 + readings.length);
    expect(sealOf([...sealed].reverse())).toEqual(seal);
    expect(isSealIntact(seal, sealed)).toBe(true);
  });

  it('does not hold when a covered entry is changed or gone', () => {
    const last = sealed.at(-1)!;
    const changed = { ...last, fact: { ...last.fact, value_si: 0.63 } } as Entry;
    expect(isSealIntact(seal, [...sealed.slice(0, -1), changed])).toBe(false);
    expect(isSealIntact(seal, sealed.slice(0, -1))).toBe(false);
  });

  it('holds when later entries come in, and when a covered one is withdrawn later', () => {
    const later = [
      ...sealed,
      entryOf(90, 90, wireReading(40, 0.0011)),
      entryOf(91, 91, {
        kind: 'withdrawn',
        v: 1,
        entry: ulidFrom(1000 + described.length),
        reason: 'wrong string',
      }),
    ];
    expect(isSealIntact(seal, later)).toBe(true);
  });
});

describe('a gap in German', () => {
  it('says what is missing, where, and what it costs later, under the same name', () => {
    const facts = [...described, ...readings].filter(
      (fact) => !(fact.kind === 'observation' && fact.thing === 'loops'),
    );
    const { gaps } = stripCheck(foldJob(journal(facts)), makeLanguage('de-DE', german));
    expect(gaps).toMatchObject([
      {
        name: 'loops/tenor',
        what: 'Schlaufen und Ösen',
        sentence:
          'Abschnitt „tenor“, Schlaufen und Ösen: nichts notiert. Welche Saiten sich einen Draht teilten, ist nach dem Absaiten nicht mehr zu sehen.',
      },
    ]);
  });
});
