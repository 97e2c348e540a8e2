import type { InferredWireSize, InferredWireSizes } from '@becket/tasks';
import { describe, expect, test } from 'vitest';
import { biasSentence, newStampForm, numberingSentence, oddsText, sizeRuns, stampOf } from './sizes-state.ts';
import { bothUnits, typedLength } from './typed-length.ts';

const note = (key: number, size: string, odds: number) =>
  ({ key, note: `${key}`, size, diameter: Number(size) / 1e4, odds }) as unknown as InferredWireSize;

describe('sizeRuns()', () => {
  test('joins neighbours of one size, and keeps apart what a missing note parts', () => {
    const runs = sizeRuns([
      note(40, '17', 0.99),
      note(41, '17', 0.7),
      note(42, '16', 0.9),
      note(44, '16', 0.8),
    ]);
    expect(runs.map(({ size, notes, least }) => [size, notes, least.odds])).toEqual([
      ['17', 2, 0.7],
      ['16', 1, 0.9],
      ['16', 1, 0.8],
    ]);
  });
});

test('odds are never told as certain', () => {
  expect([1, 0.996, 0.97].map((odds) => oddsText(odds))).toEqual(['over 99 %', 'over 99 %', '97 %']);
});

const sizes = {
  lattice: 'US',
  isLatticeFixed: false,
  latticeOdds: { US: 0.968 },
  bias: { value: -2e-6, low: -3e-6, high: 1e-6 },
  scatter: { value: 5e-6 },
} as unknown as InferredWireSizes;

test('the sentences name who chose the numbering, and both sides of the wear', () => {
  expect(numberingSentence(sizes)).toBe('The readings and stamps speak for US numbers (97 %).');
  expect(numberingSentence({ ...sizes, isLatticeFixed: true })).toContain('You fixed the US numbering');
  expect(biasSentence(sizes, 'mm')).toContain('2 µm (0.08 thou) thinner');
  expect(biasSentence(sizes, 'mm')).toContain('1 µm (0.04 thou) thicker');
});

describe('stampOf()', () => {
  test('reads the note, and refuses a stamp without its note or its text', () => {
    expect(stampOf({ ...newStampForm('A4'), text: ' 16½ ' })).toEqual({
      kind: 'size-stamp',
      key: 49,
      on: 'bridge',
      text: '16½',
      lattice: 'unknown',
      says: 'starts here',
    });
    expect(() => stampOf(newStampForm('A4'))).toThrow('what stands there is needed');
    expect(() => stampOf({ ...newStampForm('somewhere'), text: '16' })).toThrow('Cannot read a note');
  });
});

describe('typedLength()', () => {
  test('takes the unit typed over the unit of the screen, and empty as nothing', () => {
    expect(typedLength('3,5', 'mm', 'thickness')).toBeCloseTo(0.0035, 12);
    expect(typedLength('1/8', 'mm', 'thickness')).toBeCloseTo(0.003175, 12);
    expect(typedLength('0.5', 'in', 'thickness')).toBeCloseTo(0.0127, 12);
    expect(typedLength(' ', 'mm', 'thickness')).toBeUndefined();
    expect(() => typedLength('thick', 'mm', 'thickness')).toThrow("Cannot read 'thick'");
    expect(() => typedLength('-2', 'mm', 'thickness')).toThrow('0 or more is needed');
  });

  test('both units stand side by side', () => {
    expect(bothUnits(0.001, 'in', 'diameter')).toBe('0.0394 in (1.000 mm)');
  });
});
