import { describe, expect, it } from 'vitest';
import { difference, evaluate, examplesIn, partsOf } from './run-examples.ts';

describe('the examples', () => {
  it('are found with their lines, over one line or several, each to the next tag or the end', () => {
    const source = [
      'const before = 1;',
      '/**',
      ' * Twice.',
      ' *',
      ' * @example twice(2)  // = 4',
      ' * @example twice(',
      ' *   3,',
      ' * )  // = 6',
      ' * @returns something',
      ' */',
      '/** @example once(1)  // = 1 */',
    ].join('\n');
    expect(examplesIn(source)).toEqual([
      { line: 5, text: 'twice(2)  // = 4' },
      { line: 6, text: 'twice(\n  3,\n)  // = 6' },
      { line: 11, text: 'once(1)  // = 1' },
    ]);
  });

  it('are taken apart, and refused in any other form', () => {
    expect(partsOf('f(1)  // ≈ 706 N for L = 0.4 m')).toEqual({
      expression: 'f(1)',
      sign: '≈',
      answer: '706 N for L = 0.4 m',
    });
    expect(partsOf('f(1)')).toBeUndefined();
    expect(partsOf('f(1) // 706')).toBeUndefined();
  });

  it('state numbers to half a unit of the last digit written', () => {
    const about = (answer: string, value: unknown) => difference({ sign: '≈', answer }, value);
    expect(about('706 N', 706.4)).toBeUndefined();
    expect(about('706 N', 706.6)).toBe('stated 706 N, found 706.6');
    expect(about('706.0 N', 706.4)).toBeDefined();
    expect(about('-2.256 cents', -2.2561)).toBeUndefined();
    expect(about('1.2e-3', 0.00124)).toBeUndefined();
    expect(about('1.2e-3', 0.00126)).toBeDefined();
    expect(about('0.000 cents', 0.0004)).toBeUndefined();
    expect(about('about a third', 0.33)).toBe("'≈' needs a number: found 'about a third'");
    expect(about('706 N', '706')).toBeDefined();
    expect(about('706 N', Number.NaN)).toBeDefined();
  });

  it('state values exactly', () => {
    const is = (answer: string, value: unknown) => difference({ sign: '=', answer }, value);
    expect(is('A4', 'A4')).toBeUndefined();
    expect(is('1 March 2026', '1 March 2026')).toBeUndefined();
    expect(is('A4', 'A5')).toBe('stated A4, found A5');
    expect(is('11 N·m', 11)).toBeUndefined();
    expect(is('0.3', 0.1 + 0.2)).toBeUndefined();
    expect(is('0.3', 0.3000001)).toBeDefined();
    expect(is('true', true)).toBeUndefined();
    expect(is('[1,2]', [1, 2])).toBeUndefined();
    expect(is('undefined', undefined)).toBeUndefined();
    expect(is('3/0', '3/0')).toBeUndefined();
  });

  it('are worked out with the names they are given, types and promises included', async () => {
    expect(await evaluate('twice(3)', { twice: (x: number) => 2 * x })).toBe(6);
    expect(await evaluate('(list[0]! as number) + 1', { list: [1] })).toBe(2);
    expect(await evaluate('later', { later: Promise.resolve(5) })).toBe(5);
    await expect(evaluate('nothing()', {})).rejects.toThrow('nothing is not defined');
  });
});
