import type { Job } from '@becket/journal';
import { describe, expect, test } from 'vitest';
import {
  newPlatePartForm,
  type PlaceReadingForm,
  placeReadingOf,
  platePartForm,
  platePartInPlaceOf,
  platePartOf,
  sampleOf,
  softPartForm,
  softPartOf,
  softPartWords,
  windingsOf,
} from './parts-state.ts';

const thickness = (fact: ReturnType<typeof softPartOf>): number =>
  (fact as { answer: { thickness_m: number } }).answer.thickness_m;
const felt = { part: 'felt', section: 'tenor', unit: 'mm' } as const;

describe('softPartOf()', () => {
  test('keeps what was said and leaves out what was not; unknown, none and does not apply carry their reason', () => {
    const form = { ...softPartForm(undefined, 'mm'), thickness: '3', colour: 'green' };
    const fact = softPartOf(form, felt);
    expect(fact).toEqual({
      kind: 'soft-part',
      part: 'felt',
      section: 'tenor',
      answer: { is: 'known', thickness_m: 0.003, colour: 'green' },
    });
    expect(softPartWords(fact as Job['softParts'][number], 'mm')).toBe('thick 3.0 mm (0.118 in), green');
    expect(softPartOf({ ...form, answer: 'unknown', why: 'moths' }, felt)).toMatchObject({
      answer: { is: 'unknown', reason: 'moths' },
    });
    expect(softPartOf({ ...form, answer: 'none' }, felt)).toMatchObject({ answer: { is: 'none' } });
  });

  test('a punching of 0.35 mm is told as that, and stays that when its colour is changed', () => {
    const punchings = { ...felt, part: 'punchings' } as const;
    for (const typed of ['0.35', '0.0145 in', '1/64', '2.5', '.0123456 in']) {
      const first = softPartOf({ ...softPartForm(undefined, 'mm'), thickness: typed }, punchings);
      for (const unit of ['mm', 'in'] as const) {
        const form = softPartForm(first as Job['softParts'][number], unit);
        const again = softPartOf({ ...form, colour: 'grey' }, { ...punchings, unit });
        expect(thickness(again)).toBeCloseTo(thickness(first), 9);
      }
    }
    const thin = softPartOf({ ...softPartForm(undefined, 'mm'), thickness: '0.35' }, punchings);
    expect(softPartWords(thin as Job['softParts'][number], 'mm')).toBe('thick 0.35 mm (0.014 in)');
  });

  test('a slip of the unit is refused with the range and what was typed', () => {
    const form = { ...softPartForm(undefined, 'mm'), thickness: '45' };
    expect(() => softPartOf(form, felt)).toThrow(
      "Cannot keep the thickness: a length above 0 and up to 30.0 mm (1.181 in) is needed, '45' was found. Check the unit and the decimal mark.",
    );
    expect(() => softPartOf({ ...form, thickness: '4', length: '4 m' }, felt)).toThrow('up to 3000.0 mm');
    expect(() => softPartOf({ ...form, thickness: '0' }, felt)).toThrow('above 0');
  });

  test('refuses a felt of which nothing is said', () => {
    expect(() => softPartOf(softPartForm(undefined, 'mm'), felt)).toThrow('none was found');
  });

  test('comes back into the form as it was typed', () => {
    const standing = {
      answer: { is: 'known', thickness_m: 0.0025, where: 'under the rest' },
    } as Job['softParts'][number];
    expect(softPartForm(standing, 'mm')).toMatchObject({ thickness: '2.5 mm', where: 'under the rest' });
  });
});

describe('platePartOf()', () => {
  test('wants a name, both halves of a distance, and a distance of what can be moved', () => {
    const form = newPlatePartForm('tenor');
    expect(() => platePartOf(form, 'mm')).toThrow('a name of its own');
    expect(() => platePartOf({ ...form, part: 'bar 1' }, 'mm')).toThrow('movable piece needs a distance');
    expect(() =>
      platePartOf({ ...form, part: 'bar 1', distances: [{ from: 'strut', distance: '' }] }, 'mm'),
    ).toThrow("only 'strut' was found");
    expect(
      platePartOf({ ...form, part: 'bar 1', distances: [{ from: 'strut', distance: '38.1' }] }, 'mm'),
    ).toMatchObject({ distances: [{ from: 'strut', distance_m: 0.0381 }] });
  });
});

describe('platePartInPlaceOf()', () => {
  const standing = {
    entry: 'first',
    kind: 'plate-part',
    v: 1,
    part: 'bar 1',
    section: 'tenor',
    isMovable: true,
    distances: [
      { from: 'strut', distance_m: 0.0381 },
      { from: 'agraffe', distance_m: 0.12 },
    ],
  } as unknown as Job['plateParts'][number];
  const around = { unit: 'mm', before: standing, known: [standing] } as const;
  const form = platePartForm(standing, 'mm');

  test('takes the place of a piece by its name, with every distance as it was', () => {
    const { fact, takesBack } = platePartInPlaceOf({ ...form, note: 'worn' }, around);
    expect(fact).toMatchObject({ part: 'bar 1', note: 'worn', distances: standing.distances });
    expect(takesBack).toBeUndefined();
  });

  test('takes back the piece that changes its name or its section', () => {
    expect(platePartInPlaceOf({ ...form, part: 'bar 2' }, around).takesBack).toBe('first');
    expect(platePartInPlaceOf({ ...form, section: 'bass' }, around).takesBack).toBe('first');
  });

  test('refuses a further piece of the same name, whose distances would be lost', () => {
    expect(() => platePartInPlaceOf(form, { ...around, before: undefined })).toThrow(
      "Cannot keep bar 1: a name of its own is needed, the section 'tenor' has a piece of that name.",
    );
    expect(() =>
      platePartInPlaceOf({ ...form, section: 'bass' }, { ...around, before: undefined }),
    ).not.toThrow();
  });
});

describe('windingsOf()', () => {
  const job = {
    unisons: new Map(
      [1, 2, 3, 4].map((key) => [key, { key, strings: 1, winding: key < 4 ? 'wound' : 'plain', layers: 1 }]),
    ),
  } as unknown as Job;
  const winding = { loopStyle: 'single loop', twist: 'right' } as const;

  test('speaks for every wound note of a run, in either direction, and for one alone', () => {
    const keys = (from: string, to: string) =>
      windingsOf(job, { from, to, ...winding }).map((fact) => 'key' in fact && fact.key);
    expect(keys('A0', 'C1')).toEqual([1, 2, 3]);
    expect(keys('B0', 'A0')).toEqual([1, 2, 3]);
    expect(keys('A#0', '')).toEqual([2]);
    expect(() => keys('C1', '')).toThrow('none is described from C1 to C1');
  });
});

describe('placeReadingOf()', () => {
  const form: PlaceReadingForm = {
    quantity: 'bearing-rise',
    value: '1.2',
    unit: 'mm',
    note: 'A4',
    section: '',
    point: '',
    span: '100',
    loaded: 'loaded',
  };

  test('bearing and crown never go without their span and load', () => {
    expect(placeReadingOf(form, 'mm')).toEqual({
      quantity: 'bearing-rise',
      value: 1.2,
      unit: 'mm',
      place: { key: 49 },
      span_m: 0.1,
      loaded: true,
    });
    expect(() => placeReadingOf({ ...form, span: '' }, 'mm')).toThrow('the span it was read over');
    expect(() => placeReadingOf({ ...form, span: '0' }, 'mm')).toThrow(
      'Cannot keep the span: a length above 0 and up to 3000.0 mm',
    );
    expect(() => placeReadingOf({ ...form, loaded: 'not said' }, 'mm')).toThrow('pressing on the board');
    expect(() => placeReadingOf({ ...form, quantity: 'soundboard-crown', span: '' }, 'mm')).toThrow('span');
    const angle = { ...form, quantity: 'bearing-angle', unit: 'deg' } as const;
    expect(() => placeReadingOf({ ...angle, span: '' }, 'mm')).toThrow('span');
    expect(placeReadingOf(angle, 'mm')).toMatchObject({ unit: 'deg', span_m: 0.1, loaded: true });
  });

  test('the air belongs to the piano, a hitch pin to its note, and a typed unit goes over the chosen one', () => {
    expect(
      placeReadingOf({ ...form, quantity: 'relative-humidity', value: '45', unit: '%', note: '' }, 'mm'),
    ).toEqual({ quantity: 'relative-humidity', value: 45, unit: '%', place: {} });
    expect(placeReadingOf({ ...form, quantity: 'hitch-pin-diameter', value: '.11 in' }, 'mm')).toMatchObject({
      value: 0.11,
      unit: 'in',
      place: { key: 49 },
    });
    expect(() => placeReadingOf({ ...form, quantity: 'hitch-pin-diameter', note: '' }, 'mm')).toThrow(
      'the note it belongs to',
    );
  });
});

test('the height of a pressure bar belongs to a note, or to a named point of its section', () => {
  const form: PlaceReadingForm = {
    quantity: 'pressure-bar-height',
    value: '12',
    unit: 'mm',
    note: '',
    section: 'treble',
    point: 'at the left screw',
    span: '',
    loaded: 'not said',
    instrument: 'depth gauge',
  };
  expect(placeReadingOf(form, 'mm')).toMatchObject({
    place: { section: 'treble', point: 'at the left screw' },
    instrument: 'depth gauge',
  });
  expect(placeReadingOf({ ...form, note: 'C5' }, 'mm').place).toEqual({
    key: 52,
    point: 'at the left screw',
  });
  expect(() => placeReadingOf({ ...form, point: '' }, 'mm')).toThrow('neither a note nor a point');
});

test('a sample has a name and a label, and a note where it has one', () => {
  expect(sampleOf({ what: 'felt', label: 'F1', note: '' })).toMatchObject({ place: {} });
  expect(sampleOf({ what: 'wire', label: 'W', note: 'A4' })).toMatchObject({ place: { key: 49 } });
  expect(() => sampleOf({ what: 'wire', label: ' ', note: '' })).toThrow('the second was not found');
});

test('coils are typed as a fraction of a turn, and no inch is meant', () => {
  const form: PlaceReadingForm = {
    quantity: 'pin-coils',
    value: '3 1/4',
    unit: 'turns',
    note: 'A4',
    section: '',
    point: '',
    span: '',
    loaded: 'not said',
  };
  expect(placeReadingOf(form, 'mm')).toMatchObject({ value: 3.25, unit: 'turns' });
  expect(placeReadingOf({ ...form, quantity: 'pin-length', value: '2 3/8' }, 'mm')).toMatchObject({
    value: 2.375,
    unit: 'in',
  });
});
