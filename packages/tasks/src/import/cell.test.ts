import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { absenceIn, isBlank, numberIn } from './cell.ts';

const valueIn = (cell: string, mark: '.' | ',' = '.'): number | undefined => numberIn(cell, mark)?.value;

describe('numberIn()', () => {
  it('reads back every number that is written with either mark', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 10_000_000 }),
        fc.integer({ min: 0, max: 4 }),
        fc.constantFrom('.' as const, ',' as const),
        (whole, decimals, mark) => {
          const text = (whole / 10 ** decimals).toFixed(decimals);
          expect(valueIn(text.replace('.', mark), mark)).toBe(Number(text));
        },
      ),
      { seed: 1 },
    );
  });

  it('reads what people write: no nought, spaces, thousands by the mark of the table', () => {
    expect(['.041', '0.041', ' 1 040 ', "1'040", '1,040', '1,040.5'].map((cell) => valueIn(cell))).toEqual([
      0.041, 0.041, 1040, 1040, 1040, 1040.5,
    ]);
    expect([',041', '0,041', '1.040', '1.040,5'].map((cell) => valueIn(cell, ','))).toEqual([
      0.041, 0.041, 1040, 1040.5,
    ]);
  });

  it('never takes a nought and a comma for thousands', () => {
    expect(valueIn('0,039')).toBe(0.039);
    expect(valueIn('0.039', ',')).toBe(0.039);
  });

  it('reads every sixteenth, thirty-second and sixty-fourth of an inch', () => {
    for (const under of [2, 4, 8, 16, 32, 64])
      for (let over = 1; over < under; over += 1)
        for (const text of [`25 ${over}/${under}`, `25-${over}/${under}"`, `25  ${over}/${under} in`])
          expect(valueIn(text)).toBe(25 + over / under);
    expect(['3/8', '25⅜', '25 ½', '½'].map((cell) => valueIn(cell))).toEqual([0.375, 25.375, 25.5, 0.5]);
  });

  it('says which unit is written behind the number', () => {
    expect(
      ['41"', '1.04 mm', '41 thou', '1.2 m', '980 µm', '0.62in.', '2 1/2 in', '110 in-lb', '12,4 N·m'].map(
        (cell) => numberIn(cell, '.')?.unit,
      ),
    ).toEqual(['in', 'mm', 'mil', 'm', 'um', 'in', 'in', 'in·lbf', 'N·m']);
    expect(numberIn('1.04', '.')?.unit).toBeUndefined();
  });

  it('finds no number where there is none, or two, or one in a unit that is not ours', () => {
    for (const cell of [
      '',
      'thin',
      '1.2.3',
      '3,4,5',
      '41 cm',
      '#REF!',
      '1e9',
      '8/3',
      '0/4',
      '25 3/',
      '1 in 2',
    ])
      expect(numberIn(cell, '.'), cell).toBeUndefined();
  });
});

describe('isBlank()', () => {
  it('takes dashes of every length for a cell that says nothing', () => {
    for (const cell of ['', '  ', '-', '–', '—', '--', ' — ', '−', '...'])
      expect(isBlank(cell), cell).toBe(true);
    for (const cell of ['0', '-1', 'x', '?', 'none']) expect(isBlank(cell), cell).toBe(false);
  });
});

describe('absenceIn()', () => {
  it('keeps unknown, none and does-not-apply apart', () => {
    expect(['?', 'unknown', 'none', 'N/A', 'does not apply', '0.98', ''].map(absenceIn)).toEqual([
      'unknown',
      'unknown',
      'none',
      'does not apply',
      'does not apply',
      undefined,
      undefined,
    ]);
  });
});
