import type { Pass, PassPlan, Section } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import {
  centsOf,
  keptOf,
  movedEarlier,
  offsetText,
  passRows,
  placeAfter,
  toldOverpulls,
} from './settle-state.ts';

const value = (offset_cents: number, key?: number) => ({ entry: `e${offset_cents}`, key, offset_cents });
const pass = {
  sections: [
    { section: 'tenor', before: [value(-30, 40), value(-28, 43)], aimed: [], after: [] },
    { section: 'bass', before: [], aimed: [value(4)], after: [] },
  ],
} as unknown as Pass;
const sections = [
  { section: 'bass', firstKey: 1, lastKey: 26 },
  { section: 'tenor', firstKey: 27, lastKey: 51 },
] as unknown as Section[];

describe('the sheet of a pass', () => {
  it('has a line for each section in the order they are pulled up, or for its ends, its middle and what was read', () => {
    expect(passRows(pass, sections, 'before', 'section').map(({ id }) => id)).toEqual(['tenor', 'bass']);
    expect(passRows(pass, sections, 'before', 'notes').map(({ id }) => id)).toEqual([
      'tenor/B2',
      'tenor/B3',
      'tenor/C4',
      'tenor/D#4',
      'tenor/B4',
      'bass/A0',
      'bass/A#1',
      'bass/A#2',
    ]);
    expect(passRows(pass, sections, 'aimed', 'notes')).toHaveLength(2);
  });

  it('shows what is kept of a line, and nothing of another', () => {
    expect(keptOf(pass, 'before', { id: '', section: 'tenor', key: 43 })?.offset_cents).toBe(-28);
    expect(keptOf(pass, 'before', { id: '', section: 'tenor', key: undefined })).toBeUndefined();
  });

  it('goes on by Enter from section to section, then to the next step, and ends', () => {
    const rows = passRows(pass, sections, 'before', 'section');
    expect(placeAfter(rows, rows[0]!, 'before')).toEqual({ step: 'before', row: rows[1] });
    expect(placeAfter(rows, rows[1]!, 'before')).toEqual({ step: 'aimed', row: undefined });
    expect(placeAfter(rows, rows[1]!, 'after')).toBeUndefined();
  });

  it('takes overpulls that are told and not said yet, rounded down so that no limit is passed', () => {
    const plan = {
      sections: [
        { section: 'bass', next: { overpull: 9 } },
        { section: 'tenor', next: { overpull: 7.29 } },
      ],
    } as unknown as PassPlan;
    expect(toldOverpulls(pass, plan)).toEqual([{ section: 'tenor', offset_cents: 7.2 }]);
  });
});

describe('what is typed', () => {
  it('is read as cents with either minus and either decimal mark, and refused in a sentence', () => {
    expect(['-32', '−32', '4,5', '+3', ' '].map((text) => centsOf(text))).toEqual([
      -32,
      -32,
      4.5,
      3,
      undefined,
    ]);
    expect(() => centsOf('flat')).toThrow('Cannot read ‘flat’ as cents');
    expect(() => centsOf('3 mm')).toThrow('Cannot read ‘3 mm’ as cents');
  });

  it('is shown with its sign', () => {
    expect([offsetText(-7.25), offsetText(0.04), offsetText(12)]).toEqual(['−7.3', '0.0', '+12.0']);
  });

  it('puts a section a place earlier, but the first', () => {
    expect(movedEarlier(['a', 'b', 'c'], 'c')).toEqual(['a', 'c', 'b']);
    expect(movedEarlier(['a', 'b'], 'a')).toEqual(['a', 'b']);
  });
});
