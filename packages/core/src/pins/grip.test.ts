import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inNewtonMetres, millimetres, newtonMetres, newtons } from '../units/index.ts';
import { pinGrip } from './grip.ts';

const string = { tension: newtons(800), pinDiameter: millimetres(7), wireDiameter: millimetres(1) };
const positive = fc.double({ min: 0.5, max: 40, noNaN: true });

describe('pinGrip()', () => {
  // Worked by hand: r = (7 + 1)/2 mm = 4 mm; T·r = 800 N · 4 mm = 3.2 N·m. Statics; no published table.
  it('takes the pull off a sharp-going reading and adds it to a flat-going one', () => {
    expect(
      inNewtonMetres(pinGrip([{ torque: newtonMetres(14.2), turning: 'sharp' }], string).grip),
    ).toBeCloseTo(11, 12);
    expect(
      inNewtonMetres(pinGrip([{ torque: newtonMetres(7.8), turning: 'flat' }], string).grip),
    ).toBeCloseTo(11, 12);
    expect(
      inNewtonMetres(pinGrip([{ torque: newtonMetres(11), turning: 'slack' }], string).margin),
    ).toBeCloseTo(7.8, 12);
  });

  it('comes back to the grip from any readings that the grip would give', () => {
    fc.assert(
      fc.property(fc.double({ min: 4, max: 30, noNaN: true }), (grip) => {
        const [sharp, flat] = [newtonMetres(grip + 3.2), newtonMetres(grip - 3.2)];
        for (const readings of [
          [{ torque: sharp, turning: 'sharp' as const }],
          [{ torque: flat, turning: 'flat' as const }],
          [
            { torque: sharp, turning: 'sharp' as const },
            { torque: flat, turning: 'flat' as const },
          ],
        ]) {
          expect(pinGrip(readings, string).grip).toBeCloseTo(grip, 10);
        }
      }),
    );
  });

  it('does not depend on the tension when both directions were read, and says what pull they speak for', () => {
    fc.assert(
      fc.property(positive, positive, fc.double({ min: 1, max: 2000, noNaN: true }), (a, b, tension) => {
        const readings = [
          { torque: newtonMetres(a), turning: 'sharp' as const },
          { torque: newtonMetres(b), turning: 'flat' as const },
        ];
        const { grip, pullFromReadings } = pinGrip(readings, { ...string, tension: newtons(tension) });
        expect(grip).toBeCloseTo((a + b) / 2, 10);
        expect(pullFromReadings).toBeCloseTo((a - b) / 2, 10);
      }),
    );
  });

  it('refuses no reading and a torque of zero', () => {
    expect(() => pinGrip([], string)).toThrow(RangeError);
    expect(() => pinGrip([{ torque: newtonMetres(0), turning: 'sharp' }], string)).toThrow(
      /torque must be > 0/,
    );
  });
});
