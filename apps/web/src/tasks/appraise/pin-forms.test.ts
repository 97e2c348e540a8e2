import { makeLanguage } from '@becket/core';
import { describe, expect, it } from 'vitest';
import {
  openSuggestions,
  pinDiameterOf,
  pinLimitsOf,
  pinRemedyOf,
  pinsDrivenOf,
  testPinOf,
} from './pin-forms.ts';

// 1 in = 25.4 mm exactly (international inch): 0.286 in = 7.2644 mm.
const size_m = expect.closeTo(0.0072644, 12);

describe('a pin under the micrometer', () => {
  const form = { note: 'C4', string: '2', value: '0.286' };

  it('is kept as it was read, in the unit of the screen unless one is typed', () => {
    expect(pinDiameterOf(form, 'in', ' after the strip ')).toEqual({
      quantity: 'pin-diameter',
      place: { key: 40, string: 2 },
      value: 0.286,
      unit: 'in',
      reason: 'after the strip',
    });
    expect(pinDiameterOf({ ...form, value: '7,26 mm' }, 'in', '')).toMatchObject({ value: 7.26, unit: 'mm' });
    expect(Object.keys(pinDiameterOf(form, 'in', ''))).not.toContain('reason');
  });

  it('is refused without a diameter, a note or a string of the unison', () => {
    expect(() => pinDiameterOf({ ...form, value: ' ' }, 'in', '')).toThrow(/its diameter is needed/);
    expect(() => pinDiameterOf({ ...form, note: '' }, 'in', '')).toThrow(/its note is needed/);
    expect(() => pinDiameterOf({ ...form, string: '4' }, 'in', '')).toThrow(/1, 2 or 3 is needed, '4'/);
  });
});

describe('the limits of block and plate', () => {
  it('keep what is typed, and leave out what is not known', () => {
    const form = { largest: '0.286', plateHole: '', holeDepth: '38 mm', plate: ' ' };
    const limits = pinLimitsOf(form, 'in');
    expect(limits).toEqual({ largestDiameter_m: size_m, holeDepth_m: 0.038 });
    expect(Object.keys(limits)).toEqual(['largestDiameter_m', 'holeDepth_m']);
  });

  it('are refused where one is no length', () => {
    const form = { largest: '', plateHole: '0', holeDepth: '', plate: '' };
    expect(() => pinLimitsOf(form, 'mm')).toThrow(/this limit: a length above 0 is needed, '0' was found/);
  });
});

describe('a test pin', () => {
  const form = {
    note: 'A0',
    string: '1',
    diameter: '0.286',
    length: '',
    torque: '110',
    unit: 'in·lbf',
    feel: '',
    remark: '',
  };

  it('has the unit of its wrench, and no word on what nobody said', () => {
    expect(testPinOf(form, 'in')).toEqual({
      key: 1,
      string: 1,
      pinDiameter_m: size_m,
      torque: { value: 110, unit: 'in·lbf' },
    });
    expect(testPinOf({ ...form, torque: '12.4 N·m', remark: ' dry ' }, 'in')).toMatchObject({
      torque: { value: 12.4, unit: 'N·m' },
      note: 'dry',
    });
  });

  it('is refused without a diameter, and in a unit that test pins are not kept in', () => {
    expect(() => testPinOf({ ...form, diameter: '' }, 'in')).toThrow(/test pin: its diameter is needed/);
    expect(() => testPinOf({ ...form, torque: '140 kgf·cm' }, 'in')).toThrow(/in·lbf or N·m is needed/);
  });
});

describe('a pin of its own', () => {
  const form = { note: 'C4', string: '3', remedy: 'larger pin', diameter: '7.2644', remark: 'loose' };

  it('is kept with its size and remark where they are typed', () => {
    expect(pinRemedyOf(form, 'mm')).toEqual({
      key: 40,
      string: 3,
      remedy: 'larger pin',
      pinDiameter_m: size_m,
      note: 'loose',
    });
    const bare = pinRemedyOf({ ...form, remedy: 'bushing', diameter: '', remark: ' ' }, 'mm');
    expect(bare).toEqual({ key: 40, string: 3, remedy: 'bushing' });
  });

  it('is no longer suggested once something was chosen for it; a suggestion without a string is of the first', () => {
    const suggestion = (key: number, string: 1 | 2 | 3 | undefined) =>
      ({ key, string, name: `${key}/${string}`, remedy: 'larger pin', because: 'it is loose' }) as const;
    const chosen = (key: number, string: 1 | 2 | 3) => ({ key, string, remedy: 'plug' }) as never;
    const open = openSuggestions({
      suggested: [suggestion(40, 1), suggestion(40, 2), suggestion(41, undefined)] as never,
      remedies: [chosen(40, 2), chosen(41, 1)],
    });
    expect(open.map(({ name }) => name)).toEqual(['40/1']);
  });
});

describe('pins driven', () => {
  const form = { from: 'A0', to: 'B0', diameter: '0.286', length: '2.5', remark: '' };

  it('go from note to note, or are of one note alone', () => {
    expect(pinsDrivenOf(form, 'in')).toEqual({
      firstKey: 1,
      lastKey: 3,
      pinDiameter_m: size_m,
      pinLength_m: expect.closeTo(0.0635, 12),
    });
    expect(pinsDrivenOf({ ...form, to: ' ', length: '' }, 'in')).toEqual({
      firstKey: 1,
      lastKey: 1,
      pinDiameter_m: size_m,
    });
  });

  it('are refused without a diameter, in the language of the screen', () => {
    expect(() => pinsDrivenOf({ ...form, diameter: '' }, 'in')).toThrow(/their diameter is needed/);
    const german = makeLanguage('de-DE', {
      'Cannot log these pins: their diameter is needed, nothing was found. Type it.':
        'Der Durchmesser fehlt.',
    });
    expect(() => pinsDrivenOf({ ...form, diameter: '' }, 'in', german)).toThrow('Der Durchmesser fehlt.');
  });
});
