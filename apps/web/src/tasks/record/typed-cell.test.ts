import { describe, expect, test } from 'vitest';
import { readTypedCell } from './typed-cell.ts';

describe('readTypedCell()', () => {
  test('takes the unit of its column for a bare number, and a typed unit over it', () => {
    expect(readTypedCell('1,025', 'wire-diameter', 'mm')).toEqual({ do: 'record', value: 1.025, unit: 'mm' });
    expect(readTypedCell('.041', 'wire-diameter', 'in')).toEqual({ do: 'record', value: 0.041, unit: 'in' });
    expect(readTypedCell('.041 in', 'wire-diameter', 'mm')).toEqual({
      do: 'record',
      value: 0.041,
      unit: 'in',
    });
    expect(readTypedCell('40.5', 'wire-diameter', 'mil')).toEqual({ do: 'record', value: 40.5, unit: 'mil' });
    expect(readTypedCell('41 thou', 'wire-diameter', 'mm')).toEqual({
      do: 'record',
      value: 0.041,
      unit: 'in',
    });
  });

  test.each([
    ['?', 'unknown'],
    ['-', 'none'],
    ['—', 'none'],
    ['/', 'does not apply'],
    ['x', 'does not apply'],
    ['none', 'none'],
  ])('%j is the answer %j and not a number', (text, answer) => {
    expect(readTypedCell(text, 'bare-front', 'mm')).toEqual({ do: 'say', answer });
  });

  test('an empty cell says nothing: it is neither zero nor none', () => {
    expect(readTypedCell('   ', 'bare-front', 'mm')).toEqual({ do: 'nothing' });
    expect(readTypedCell('0', 'bare-front', 'mm')).toEqual({ do: 'record', value: 0, unit: 'mm' });
  });

  test('says what it cannot read', () => {
    expect(readTypedCell('1.02.5', 'wire-diameter', 'mm')).toMatchObject({ do: 'object' });
  });
});
