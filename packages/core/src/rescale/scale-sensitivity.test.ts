import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equalTemperedFrequency } from '../pitch/index.ts';
import { analyseNote, type ScaleNote } from '../scale/index.ts';
import { A228_MINIMUM } from '../tables/index.ts';
import { hertz, metres, micrometres, millimetres } from '../units/index.ts';
import { scaleSensitivity } from './scale-sensitivity.ts';
import { examplePianos } from './testing/example-pianos.ts';

const plainNote = (key: number, length_mm: number, diameter_mm: number): ScaleNote => ({
  key,
  section: 'treble',
  bridge: 'long bridge',
  strings: 3,
  frequency: equalTemperedFrequency(key, hertz(440)),
  string: { kind: 'plain', speakingLength: millimetres(length_mm), diameter: millimetres(diameter_mm) },
});

describe('scaleSensitivity()', () => {
  // The closed forms of a plain string: T ∝ L²·d², B ∝ d⁴/(T·L²) = d²/L⁴; break share = T / (strength · area).
  it('follows the closed forms of a plain string, for any note', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 35, max: 88 }),
        fc.double({ min: 50, max: 900, noNaN: true }),
        fc.double({ min: 0.75, max: 1.2, noNaN: true }),
        (key, length, diameter) => {
          const note = plainNote(key, length, diameter);
          const { tension, breakShare } = analyseNote(note, { uncertainties: 'left out' });
          const [one] = scaleSensitivity([note]);
          for (const [sign, way] of [
            [1, 'more'],
            [-1, 'less'],
          ] as const) {
            const byLength = one!.speakingLength[way];
            const stretched = 1 + (sign * 0.5) / length;
            expect(byLength.tension / tension).toBeCloseTo(stretched ** 2 - 1, 9);
            expect(byLength.breakShare / breakShare).toBeCloseTo(stretched ** 2 - 1, 9);
            expect(byLength.inharmonicityShare).toBeCloseTo(stretched ** -4 - 1, 9);
            const byWire = one!.wireDiameter[way];
            const thicker = 1 + (sign * 0.005) / diameter;
            expect(byWire.tension / tension).toBeCloseTo(thicker ** 2 - 1, 9);
            expect(byWire.inharmonicityShare).toBeCloseTo(thicker ** 2 - 1, 9);
            // Area and tension grow alike: what is left is that thicker wire is weaker.
            const strength = (d: number) => A228_MINIMUM.strengthAt(millimetres(d)).strength;
            const weaker = strength(diameter) / strength(diameter + sign * 0.005);
            expect(byWire.breakShare / breakShare).toBeCloseTo(weaker - 1, 9);
          }
          expect(one!.windingDiameter).toBeUndefined();
        },
      ),
    );
  });

  it('has the right signs on every note of the example grand, and half the step does about half', () => {
    const { notes } = examplePianos[0]!;
    const full = scaleSensitivity(notes);
    const half = scaleSensitivity(notes, { speakingLength: metres(0.25e-3), diameter: micrometres(2.5) });
    expect(full).toHaveLength(88);
    full.forEach(({ key, speakingLength, wireDiameter, windingDiameter }, index) => {
      expect(key).toBe(notes[index]!.key);
      for (const ways of [
        speakingLength,
        wireDiameter,
        ...(windingDiameter === undefined ? [] : [windingDiameter]),
      ]) {
        expect(ways.more.tension).toBeGreaterThan(0);
        expect(ways.less.tension).toBeLessThan(0);
      }
      const smaller = half[index]!;
      expect(smaller.speakingLength.more.tension / speakingLength.more.tension).toBeCloseTo(0.5, 1);
      expect(smaller.wireDiameter.more.tension / wireDiameter.more.tension).toBeCloseTo(0.5, 1);
      if (notes[index]!.string.kind === 'wound') {
        // A thicker core under the same windings: more mass, yet far stronger and stiffer.
        expect(wireDiameter.more.breakShare).toBeLessThan(0);
        expect(wireDiameter.more.inharmonicityShare).toBeGreaterThan(0);
        expect(windingDiameter!.more.breakShare).toBeGreaterThan(0);
        expect(windingDiameter!.more.inharmonicityShare).not.toBe(0);
      }
    });
  });

  it('refuses a step that is none', () => {
    expect(() => scaleSensitivity([plainNote(60, 300, 0.9)], { diameter: metres(0) })).toThrow(
      /step of the diameter must be > 0/,
    );
  });
});
