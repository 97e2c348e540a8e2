import { describe, expect, it } from 'vitest';
import { hertz } from '../units/index.ts';
import { beatTable, tuningIntervals } from './beat-table.ts';
import { equalTemperedFrequency } from './equal-temperament.ts';

const equal = (key: number) => ({ firstPartial: equalTemperedFrequency(key, hertz(440)), inharmonicity: 0 });

describe('beatTable()', () => {
  const compass = Array.from({ length: 88 }, (_, index) => ({ key: index + 1, ...equal(index + 1) }));

  it('lists every interval that fits, at each pair', () => {
    const table = beatTable(compass);
    for (const { name, semitones, pairs: listed } of tuningIntervals) {
      expect(table.filter(({ interval }) => interval === name)).toHaveLength(
        (88 - semitones) * listed.length,
      );
    }
  });

  it('has pairs whose ratio is nearest to its interval', () => {
    for (const { semitones, pairs: listed } of tuningIntervals) {
      for (const [p, q] of listed) expect(Math.abs(12 * Math.log2(p / q) - semitones)).toBeLessThan(0.2);
    }
  });

  it('leaves out intervals with a missing note', () => {
    const table = beatTable(compass.filter(({ key }) => key === 40 || key === 47));
    expect(table.map(({ interval, lowerKey, upperKey }) => [interval, lowerKey, upperKey])).toEqual([
      ['fifth', 40, 47],
      ['fifth', 40, 47],
    ]);
  });

  it('lets the major thirds of equal temperament quicken from note to note', () => {
    const thirds = beatTable(compass).filter(({ interval }) => interval === 'major third');
    for (let k = 1; k < thirds.length; k++) expect(thirds[k]!.rate).toBeGreaterThan(thirds[k - 1]!.rate);
  });
});
