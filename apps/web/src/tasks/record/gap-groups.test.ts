import { type Fact, foldJob, stripCheck } from '@becket/journal';
import { expect, test } from 'vitest';
import { entryOf } from '../../../../../packages/journal/src/testing/arbitrary-entries.ts';
import { gapGroups, placesOf } from './gap-groups.ts';
import { wayOfGap } from './gap-way.ts';

const section = (name: string, firstKey: number, lastKey: number): Fact => ({
  kind: 'section-described',
  v: 1,
  section: name,
  firstKey,
  lastKey,
  bridge: 'long',
  frontTermination: 'pressure bar',
});
/** Two wound notes and three plain ones, in two sections; of C4 somebody could not read the wire. */
const facts: Fact[] = [
  { kind: 'job-opened', v: 1, title: 'five notes' },
  { kind: 'piano-described', v: 1, form: 'vertical', firstKey: 36, lastKey: 40, referencePitch_hz: 440 },
  section('tenor', 36, 38),
  section('treble', 39, 40),
  { kind: 'unisons-described', v: 1, firstKey: 36, lastKey: 37, strings: 2, winding: 'wound', layers: 1 },
  { kind: 'unisons-described', v: 1, firstKey: 38, lastKey: 40, strings: 3, winding: 'plain', layers: 0 },
  { kind: 'reading-absent', v: 1, quantity: 'wire-diameter', place: { key: 40 }, answer: 'unknown' },
];
const job = foldJob(facts.map((fact, index) => entryOf(index, index + 1, fact)));
const { gaps } = stripCheck(job);
const named = (name: string) => gaps.find((gap) => gap.name === name)!;

test('gaps of one kind are told together, and every gap is in one group', () => {
  const groups = gapGroups(gaps);
  expect(
    groups
      .flatMap((group) => group.gaps)
      .map(({ name }) => name)
      .sort(),
  ).toEqual(gaps.map(({ name }) => name).sort());
  const wires = groups.find(({ kind }) => kind === 'wire-diameter')!;
  expect(wires).toMatchObject({
    what: 'wire diameter',
    cost: 'with the wire gone only its neighbours can say what size it was.',
  });
  expect(placesOf(wires.gaps)).toBe('A#3 to C4');
  expect(wires.gaps.map(({ found }) => found)).toEqual([
    undefined,
    undefined,
    'somebody looked and could not read it',
  ]);
  expect(placesOf(groups.find(({ kind }) => kind === 'felts')!.gaps)).toBe('tenor, treble');
});

test('a gap of a note leads to its cell, whatever section and column were looked at before', () => {
  expect(wayOfGap(named('wire-diameter/C4'), job)).toEqual({
    task: 'record',
    view: { column: 'wire-diameter', section: undefined },
    key: 40,
    focus: '#cell-40-wire-diameter',
  });
  expect(wayOfGap(named('over-all-diameter/G#3'), job)).toMatchObject({
    view: { column: 'over-all-diameter', section: undefined },
    focus: '#cell-36-over-all-diameter',
  });
});

test('a reading that a section wants once leads to its first note that has one, with the columns it needs', () => {
  expect(wayOfGap(named('back-length/treble'), job)).toEqual({
    task: 'record',
    view: { column: 'back-length', section: 'treble', withFurther: true },
    key: 39,
    focus: '#cell-39-back-length',
  });
  expect(wayOfGap(named('winding-length/tenor'), job).focus).toBe('#cell-36-winding-length');
});

test('every other gap leads to the part where it is filled, in its section', () => {
  const partOf = (name: string) => {
    const { task, part, view } = wayOfGap(named(name), job);
    return [task, part, view?.section];
  };
  expect(partOf('pitch-offset/piano')).toEqual(['appraise', 'air', undefined]);
  expect(partOf('soundboard-crown/piano')).toEqual(['record', 'seen', 'tenor']);
  expect(partOf('loops/treble')).toEqual(['record', 'loops', 'treble']);
  expect(partOf('hitch-pins/treble')).toEqual(['record', 'loops', 'treble']);
  expect(partOf('stamps/tenor')).toEqual(['record', 'sizes', 'tenor']);
  for (const name of [
    'felts',
    'punchings',
    'dampers',
    'bars',
    'bearing',
    'bridge-spacing',
    'pressure-bar-height',
  ])
    expect(partOf(`${name}/treble`), name).toEqual(['record', 'seen', 'treble']);
  expect(wayOfGap(named('dampers/treble'), job).focus).toBe('[data-thing="dampers"]');
  expect(wayOfGap({ name: 'stringing/C4', place: { key: 40 } }, job)).toEqual({
    task: 'record',
    part: 'sections',
  });
  expect(wayOfGap({ name: 'windings/no section', place: { key: 36 } }, job).part).toBe('sections');
  expect(wayOfGap({ name: 'piano', place: {} }, job)).toEqual({ task: 'appraise' });
});
