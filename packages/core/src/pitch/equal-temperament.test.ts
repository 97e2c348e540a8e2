import { describe, expect, it } from 'vitest';
import { expectPublished, inputOf, publishedChecks } from '../tables/testing/published-checks.ts';
import { hertz } from '../units/index.ts';
import { equalTemperedFrequency } from './equal-temperament.ts';

describe('equalTemperedFrequency()', () => {
  // Source: the MIDI tuning convention (see each check).
  it.each(publishedChecks(/^midi-/))('$id ($source)', (check) => {
    expectPublished(check, equalTemperedFrequency(inputOf(check, 'midi') - 20, hertz(440)));
  });

  it('doubles in every octave and follows the reference pitch', () => {
    for (let key = 1; key <= 76; key++) {
      const ratio = equalTemperedFrequency(key + 12, hertz(442)) / equalTemperedFrequency(key, hertz(442));
      expect(ratio).toBeCloseTo(2, 12);
    }
    expect(equalTemperedFrequency(49, hertz(435))).toBe(435);
  });

  it('refuses what is not a pitch', () => {
    expect(() => equalTemperedFrequency(49, hertz(0))).toThrow(
      'Cannot compute an equal-tempered frequency as the reference pitch must be > 0: current value is 0',
    );
    expect(() => equalTemperedFrequency(0, hertz(440))).toThrow(RangeError);
  });
});
