import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { german } from '../german.ts';
import { inches, millimetres } from '../units/index.ts';
import { makeLanguage } from '../words/index.ts';
import {
  COMMON_SLIP_POLICIES,
  type ReadingAround,
  type SlipContext,
  slipQuestions,
  type TypedReading,
} from './slip-questions.ts';

const around = (...values: readonly (readonly [key: number, value: number, string?: number])[]) =>
  values.map(([key, value, string]): ReadingAround => ({ key, string, value_si: millimetres(value) }));
const wire = (readings: readonly ReadingAround[] = [], more: Partial<SlipContext> = {}): SlipContext => ({
  policy: COMMON_SLIP_POLICIES['wire-diameter'],
  possible: [0.0006, 0.0018],
  around: readings,
  ...more,
});
const kinds = (reading: TypedReading, context: SlipContext) =>
  slipQuestions(reading, context).map(({ kind }) => kind);

const neighbours = around([38, 1.06], [39, 1.04], [41, 1.04], [42, 1.03]);

describe('slipQuestions() about units', () => {
  it.each([
    { value: 0.41, unit: 'mm', text: '0.041 in', name: '0.41 mm for .041 in' },
    { value: 0.041, unit: 'mm', text: '0.041 in', name: 'inches with the unit on millimetres' },
    { value: 1.04, unit: 'in', text: '1.04 mm', name: 'millimetres with the unit on inches' },
    { value: 41, unit: 'in', text: '41 mil', name: 'thousandths with the unit on inches' },
    { value: 10.4, unit: 'mm', text: '1.04 mm', name: 'a decimal point one place off' },
    { value: 104, unit: 'mm', text: '1.04 mm', name: 'a decimal point left out' },
    { value: 1.04, unit: 'um', text: '1.04 mm', name: 'millimetres with the unit on micrometres' },
  ] as const)('suggests $text for $name', ({ value, unit, text }) => {
    const [question, ...more] = slipQuestions({ key: 40, value, unit }, wire(neighbours));
    expect(more).toEqual([]);
    expect(question!.kind).toBe('unit');
    expect(question!.suggestion!.text).toBe(text);
    expect(question!.sentence.endsWith(`${text}?`)).toBe(true);
    expect(Math.abs(question!.suggestion!.value_si - 0.00104)).toBeLessThan(0.00002);
  });

  it('takes inch-pounds for newton metres by the neighbours', () => {
    const torque: SlipContext = {
      policy: { ...COMMON_SLIP_POLICIES['pin-torque'] },
      possible: [0, 60],
      around: [30, 31, 32].map((key) => ({ key, value_si: 9 + key / 10 })),
    };
    const [question] = slipQuestions({ key: 33, value: 110, unit: 'N·m' }, torque);
    expect(question).toMatchObject({ kind: 'unit', suggestion: { text: '110 in·lbf' } });
    expect(question!.suggestion!.value_si).toBeCloseTo(12.43, 2);
  });

  it('says a suggestion that raises no further question of size', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.75, max: 1.5, noNaN: true }),
        fc.constantFrom('mm', 'in', 'um', 'mil', 'm' as const),
        fc.constantFrom(0.01, 0.1, 1, 10, 100),
        (truth, unit, factor) => {
          const context = wire(around([38, truth], [39, truth], [41, truth], [42, truth]));
          const value = Number((truth * factor).toPrecision(4));
          for (const { suggestion } of slipQuestions({ key: 40, value, unit: unit as 'mm' }, context)) {
            if (suggestion === undefined) continue;
            const again = kinds({ key: 40, value: suggestion.value, unit: suggestion.unit }, context);
            expect(again).not.toContain('unit');
            expect(again).not.toContain('jump');
            expect(again).not.toContain('impossible');
          }
        },
      ),
    );
  });

  it('never asks about a size of a run that goes on', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 29, max: 60 }),
        fc.integer({ min: -4, max: 4 }),
        (thousandths, wobble) => {
          const value = inches(thousandths / 1000) * 1000;
          const run = around([38, value], [39, value], [41, value], [42, value]);
          expect(kinds({ key: 40, value: value + wobble / 1000, unit: 'mm' }, wire(run))).toEqual([]);
        },
      ),
    );
  });
});

describe('slipQuestions() about the figure', () => {
  it('asks an impossible one that no slip explains, with what is possible in the unit that was typed', () => {
    const [question] = slipQuestions({ key: 40, value: -1, unit: 'mm' }, wire());
    expect(question).toMatchObject({ kind: 'impossible', suggestion: undefined });
    expect(question!.sentence).toBe(
      'C4: -1 mm is not possible as wire diameter: 0.6 to 1.8 mm is. Is it so?',
    );
    expect(kinds({ key: 40, value: 0, unit: 'mm' }, wire(neighbours))).toEqual(['impossible']);
    expect(kinds({ key: 40, value: Number.NaN, unit: 'mm' }, wire(neighbours))).toEqual(['impossible']);
  });

  it('asks a jump from two neighbours or more, in the same run only', () => {
    const [question] = slipQuestions({ key: 40, value: 1.2, unit: 'mm' }, wire(neighbours));
    expect(question).toMatchObject({ kind: 'jump', suggestion: undefined });
    expect(question!.sentence).toBe(
      'C4: 1.2 mm is far from the wire diameter of its neighbours, about 1.04 mm. Is it so?',
    );
    expect(kinds({ key: 40, value: 1.2, unit: 'mm' }, wire(around([39, 1.04])))).not.toContain('jump');
    const sameRun = { firstKey: 40, lastKey: 60 };
    expect(kinds({ key: 40, value: 1.2, unit: 'mm' }, wire(neighbours.slice(0, 2), { sameRun }))).toEqual([]);
  });

  it('asks a jump as soon as it is further from its neighbours than the policy allows, up or down', () => {
    const alike = around([38, 1], [39, 1], [41, 1], [42, 1]);
    const policy = { ...COMMON_SLIP_POLICIES['wire-diameter'], furthest: 0.1 };
    const asked = (apart: number) =>
      kinds({ key: 40, value: Math.exp(apart), unit: 'mm' }, wire(alike, { policy })).includes('jump');
    expect([-0.101, -0.099, 0.099, 0.101].map(asked)).toEqual([true, false, false, true]);
  });

  it('asks a size that rises to the treble, seen from either side', () => {
    expect(kinds({ key: 40, value: 1.065, unit: 'mm' }, wire(around([38, 1.04], [39, 1.04])))).toEqual([
      'rising to the treble',
    ]);
    expect(kinds({ key: 40, value: 1.015, unit: 'mm' }, wire(around([41, 1.04], [42, 1.04])))).toEqual([
      'rising to the treble',
    ]);
    // A size that falls, as sizes do.
    expect(kinds({ key: 40, value: 1.015, unit: 'mm' }, wire(around([38, 1.04], [39, 1.04])))).toEqual([]);
  });

  it('asks a string unlike the others of its unison', () => {
    const [question] = slipQuestions(
      { key: 40, string: 2, value: 1.065, unit: 'mm' },
      wire(around([40, 1.04, 1], [39, 1.065, 2])),
    );
    expect(question!.sentence).toBe(
      'C4: the wire diameter of 1.065 mm differs from string 1 of the same unison, 1.04 mm. Is it so?',
    );
  });

  it('names the reading of the note where no string is named: a note of one string has no other', () => {
    const [question] = slipQuestions(
      { key: 40, string: 1, value: 1.065, unit: 'mm' },
      wire(around([40, 1.04], [39, 1.065, 1])),
    );
    expect(question!.sentence).toBe(
      'C4: the wire diameter of 1.065 mm differs from the reading of the note, 1.04 mm. Is it so?',
    );
  });

  it('does not hold a string against its own earlier reading', () => {
    expect(kinds({ key: 40, string: 1, value: 1.07, unit: 'mm' }, wire(around([40, 1.04, 1])))).toEqual([]);
  });
});

describe('slipQuestions() about the lengths beside the speaking length', () => {
  const possible = [0.001, 1] as const;
  it.each([
    { quantity: 'front-length', run: [96, 88, 101, 93], value: 3.7, unit: 'mm', text: '3.7 in' },
    { quantity: 'back-length', run: [120, 118, 115, 114], value: 11.7, unit: 'mm', text: '117 mm' },
    { quantity: 'loop-to-winding', run: [140, 138, 137, 135], value: 1390, unit: 'mm', text: '139 mm' },
    { quantity: 'bare-front', run: [18, 19, 17, 18], value: 180, unit: 'mm', text: '18 mm' },
    { quantity: 'pin-length', run: [62, 62, 62, 62], value: 62, unit: 'in', text: '62 mm' },
    { quantity: 'hitch-pin-diameter', run: [4.2, 4.2, 4.3, 4.2], value: 0.42, unit: 'mm', text: '4.2 mm' },
  ] as const)(
    'asks $value $unit as $quantity among its neighbours, and means $text',
    ({ quantity, run, value, unit, text }) => {
      const policy = COMMON_SLIP_POLICIES[quantity];
      const beside = around([38, run[0]], [39, run[1]], [41, run[2]], [42, run[3]]);
      const [question, ...more] = slipQuestions(
        { key: 40, value, unit },
        { policy, possible, around: beside },
      );
      expect(more).toEqual([]);
      expect(question).toMatchObject({ kind: 'unit', suggestion: { text } });
    },
  );

  it('asks nothing of pins that stand in rows, of one length on every note, or of a back length that a rest shortens', () => {
    const rows = around([39, 62, 1], [39, 81, 2], [39, 101, 3], [40, 61, 1]);
    const front = { policy: COMMON_SLIP_POLICIES['front-length'], possible, around: rows };
    expect(kinds({ key: 40, string: 3, value: 100, unit: 'mm' }, front)).toEqual([]);
    const pins = { policy: COMMON_SLIP_POLICIES['pin-length'], possible, around: around([38, 62], [39, 62]) };
    expect(kinds({ key: 40, value: 62, unit: 'mm' }, pins)).toEqual([]);
    const back = {
      policy: COMMON_SLIP_POLICIES['back-length'],
      possible,
      around: around([38, 120], [39, 118]),
    };
    expect(kinds({ key: 40, value: 70, unit: 'mm' }, back)).toEqual([]);
  });
});

describe('slipQuestions() about the same value again', () => {
  it('lets wire repeat, as sizes come in runs, until six in a row agree to the last digit', () => {
    const row = around([35, 1.041], [36, 1.041], [37, 1.041], [38, 1.041], [39, 1.041]);
    expect(kinds({ key: 40, value: 1.041, unit: 'mm' }, wire(row.slice(1)))).toEqual([]);
    expect(kinds({ key: 40, value: 1.041, unit: 'mm' }, wire(row))).toEqual(['duplicate']);
    expect(kinds({ key: 40, value: 1.042, unit: 'mm' }, wire(row))).toEqual([]);
  });

  it('asks at once for a speaking length that is the same as the note before', () => {
    const lengths = (readings: readonly ReadingAround[]): SlipContext => ({
      policy: COMMON_SLIP_POLICIES['speaking-length'],
      possible: [0.03, 2.6],
      around: readings,
    });
    const [question] = slipQuestions(
      { key: 41, value: 612, unit: 'mm' },
      lengths(around([39, 680], [40, 612])),
    );
    expect(question!.sentence).toBe(
      'C#4: the speaking length of 612 mm is exactly that of C4. Is it so, or was it entered twice?',
    );
    expect(kinds({ key: 41, value: 583, unit: 'mm' }, lengths(around([39, 680], [40, 612])))).toEqual([]);
    // Another string of the same note is expected to be as long.
    expect(kinds({ key: 40, string: 2, value: 612, unit: 'mm' }, lengths(around([40, 612, 1])))).toEqual([]);
  });
});

describe('a question in German', () => {
  it('names the reading, its neighbours and what it may have been meant to say', () => {
    const ask = (value: number, unit: 'mm' | 'in') =>
      slipQuestions({ key: 40, value, unit }, wire(neighbours), makeLanguage('de-DE', german));
    expect(ask(0.41, 'mm')[0]).toMatchObject({
      sentence: 'C4: Drahtdurchmesser 0,41 mm ist nicht möglich, nur 0,6 bis 1,8 mm. 0,041 in?',
      suggestion: { text: '0,041 in', value: 0.041 },
    });
    expect(ask(1.2, 'mm')[0]!.sentence).toBe(
      'C4: Drahtdurchmesser 1,2 mm liegt weit weg von den Nachbarn, etwa 1,04 mm. Stimmt das?',
    );
  });
});
