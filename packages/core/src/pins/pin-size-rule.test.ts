import { describe, expect, it } from 'vitest';
import { inchPounds, newtonMetres } from '../units/index.ts';
import { COMMON_PIN_SIZE_POLICY, COMMON_PIN_SIZES, pinSizeAdvice } from './pin-size-rule.ts';

const readings = (...torques: number[]) => torques.map(inchPounds);

describe('COMMON_PIN_SIZES', () => {
  it('are the diameters as commonly listed, in inches (common practice; 3/0 and up from memory)', () => {
    const listed: Readonly<Record<string, number>> = {
      '1/0': 0.276,
      '2/0': 0.282,
      '2½/0': 0.284,
      '3/0': 0.286,
      '4/0': 0.291,
      '5/0': 0.296,
      '6/0': 0.301,
      '7/0': 0.306,
      '8/0': 0.311,
    };
    expect(
      Object.fromEntries(
        COMMON_PIN_SIZES.map((size) => [size.label, Number((size.diameter_m / 0.0254).toFixed(6))]),
      ),
    ).toEqual(listed);
  });
});

describe('pinSizeAdvice()', () => {
  it('goes up one size when every reading is about 120 in·lbf or more (common practice, no source)', () => {
    expect(pinSizeAdvice({ readings: readings(120, 145, 160), asFound: '2/0' })).toMatchObject({
      kind: 'size up',
      sizesUp: 1,
      to: { label: '3/0' },
    });
    // 13.6 N·m is how the limit is told in metric.
    expect(pinSizeAdvice({ readings: [newtonMetres(13.6)], asFound: '2/0' })).toMatchObject({ sizesUp: 1 });
  });

  it('goes up two sizes when one reading is less (common practice, no source)', () => {
    expect(pinSizeAdvice({ readings: readings(119, 145, 160), asFound: '2/0' })).toMatchObject({
      kind: 'size up',
      sizesUp: 2,
      to: { label: '4/0' },
    });
  });

  it('questions the block itself when a reading is very loose', () => {
    const advice = pinSizeAdvice({ readings: readings(39, 145), asFound: '2/0' });
    expect(advice.kind).toBe('block in question');
    expect(advice.sentence).toContain('39 in·lbf');
    expect(advice.sentence).toContain('common practice');
  });

  it('steps over the half size and counts it as the whole size below it', () => {
    expect(pinSizeAdvice({ readings: readings(150), asFound: '2½/0' })).toMatchObject({
      to: { label: '3/0' },
    });
  });

  it('says so when the list has no larger size', () => {
    expect(pinSizeAdvice({ readings: readings(100), asFound: '7/0' }).kind).toBe('no larger size');
    expect(pinSizeAdvice({ readings: readings(130), asFound: '7/0' })).toMatchObject({
      to: { label: '8/0' },
    });
  });

  it('follows a policy that a shop has edited and sent through JSON', () => {
    const policy = JSON.parse(
      JSON.stringify({ ...COMMON_PIN_SIZE_POLICY, firmTorque_n_m: 10, source: 'our shop' }),
    );
    const advice = pinSizeAdvice({ readings: readings(100), asFound: '2/0', policy });
    expect(advice).toMatchObject({ kind: 'size up', sizesUp: 1 });
    expect(advice.sentence).toContain('our shop');
  });

  it('never advises a smaller step for looser pins', () => {
    let before = 0;
    for (let torque = 160; torque >= 45; torque -= 1) {
      const advice = pinSizeAdvice({ readings: readings(torque), asFound: '2/0' });
      const sizesUp = advice.kind === 'size up' ? advice.sizesUp : Number.NaN;
      expect(sizesUp).toBeGreaterThanOrEqual(before);
      before = sizesUp;
    }
  });

  it('refuses no readings, a reading of zero and an unknown size', () => {
    expect(() => pinSizeAdvice({ readings: [], asFound: '2/0' })).toThrow(/at least one torque reading/);
    expect(() => pinSizeAdvice({ readings: readings(0), asFound: '2/0' })).toThrow(/torque must be > 0/);
    expect(() => pinSizeAdvice({ readings: readings(100), asFound: '9/0' })).toThrow(
      /must be one of 1\/0, 2\/0, .*: found '9\/0'/,
    );
  });
});
