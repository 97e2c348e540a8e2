import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlainString, WoundString } from '../strings/index.ts';
import { woundStringModes, woundTensionAtPitch } from '../strings/index.ts';
import { cents, hertz, metres, millimetres } from '../units/index.ts';
import { comparedSounds } from './compared-sounds.ts';
import { HEADPHONE_PEAK_DBFS, matchLevels, rootMeanSquare } from './match-levels.ts';
import { partialDecay } from './partial-decay.ts';
import { octaveAbove, singleNote, thirdsAcross } from './passages.ts';
import { renderSound } from './render-sound.ts';
import { soundingPartials } from './sounding-partials.ts';
import { type NoteToStrike, struckNote } from './struck-note.ts';

const rate = 44_100;
const plain: PlainString = { kind: 'plain', speakingLength: metres(0.96), diameter: millimetres(1.146) };
const wound: WoundString = {
  kind: 'wound',
  speakingLength: metres(1.3),
  coreDiameter: millimetres(1.1),
  layers: [{ wireDiameter: millimetres(0.75), bareFront: millimetres(40), bareBack: millimetres(25) }],
};
const inCents = (one: number, other: number) => 1200 * Math.log2(one / other);
const decibels = (one: number, other: number) => 20 * Math.log10(one / other);

/** Magnitude of the discrete Fourier transform at any frequency, by its definition, under a Hann window. */
function magnitudeAt(samples: Float32Array, frequency: number): number {
  const angle = (2 * Math.PI * frequency) / rate;
  const [turnCos, turnSin] = [Math.cos(angle), Math.sin(angle)];
  const hann = (2 * Math.PI) / samples.length;
  let [cosine, sine, real, imaginary] = [1, 0, 0, 0];
  for (let index = 0; index < samples.length; index += 1) {
    const windowed = samples[index]! * (0.5 - 0.5 * Math.cos(hann * index));
    real += windowed * cosine;
    imaginary -= windowed * sine;
    [cosine, sine] = [cosine * turnCos - sine * turnSin, sine * turnCos + cosine * turnSin];
  }
  return Math.hypot(real, imaginary);
}

/** Where the spectrum is highest within a few hertz of a place: golden section. */
function peakNear(samples: Float32Array, guess: number): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [guess - 0.8, guess + 0.8];
  for (let step = 0; step < 12; step += 1) {
    const [left, right] = [high - ratio * (high - low), low + ratio * (high - low)];
    if (magnitudeAt(samples, left) > magnitudeAt(samples, right)) high = right;
    else low = left;
  }
  return (low + high) / 2;
}

const heard = (note: NoteToStrike, seconds = 1.5) =>
  renderSound([{ partials: struckNote(note), from: 0, to: seconds }], rate);

describe('soundingPartials()', () => {
  it('tunes the first partial, plain or wound, and stops below the limit', () => {
    for (const string of [plain, wound]) {
      const partials = soundingPartials({ string, firstPartial: hertz(110), highest: hertz(3000) });
      expect(inCents(partials[0]!, 110)).toBeCloseTo(0, 6);
      expect(partials.at(-1)).toBeLessThanOrEqual(3000);
      expect(partials.length).toBeGreaterThan(20);
    }
  });

  it('gives a string without a winding the partials of a plain one', () => {
    // Also compares the closed form with the finite-segment modes: two independent ways to one string.
    const bare: WoundString = { ...wound, layers: [] };
    const same: PlainString = {
      kind: 'plain',
      speakingLength: wound.speakingLength,
      diameter: wound.coreDiameter,
    };
    const of = (string: PlainString | WoundString) =>
      soundingPartials({ string, firstPartial: hertz(150), highest: hertz(6000) });
    const [asWound, asPlain] = [of(bare), of(same)];
    expect(asWound).toHaveLength(asPlain.length);
    asWound.forEach((frequency, index) => {
      expect(Math.abs(inCents(frequency, asPlain[index]!))).toBeLessThan(0.01);
    });
  });
});

describe('the rendered sound', () => {
  it('has the partials of the model, plain: within 1 cent by the transform', () => {
    const samples = heard({ key: 37, string: plain, strings: 1, firstPartial: hertz(220) });
    const partials = soundingPartials({ string: plain, firstPartial: hertz(220), highest: hertz(12_000) });
    for (const n of [1, 2, 3, 5, 7, 10])
      expect(Math.abs(inCents(peakNear(samples, partials[n - 1]!), partials[n - 1]!)), `${n}`).toBeLessThan(
        1,
      );
  });

  it('has the exact modes of a wound string, not those of its core formula', () => {
    const firstPartial = hertz(62);
    const samples = heard({ key: 15, string: wound, strings: 1, firstPartial }, 2);
    const tension = woundTensionAtPitch({
      string: wound,
      frequency: firstPartial,
      stiffness: 'counted',
    }).value;
    const modes = woundStringModes({ string: wound, tension, count: 16 }).value;
    for (const n of [1, 3, 6, 11, 15])
      expect(Math.abs(inCents(peakNear(samples, modes[n - 1]!), modes[n - 1]!)), `${n}`).toBeLessThan(1);
  });

  it('lacks the partial whose node the hammer strikes', () => {
    const samples = heard({ key: 37, string: plain, strings: 1, firstPartial: hertz(220) });
    const partials = soundingPartials({ string: plain, firstPartial: hertz(220), highest: hertz(12_000) });
    expect(magnitudeAt(samples, partials[7]!)).toBeLessThan(magnitudeAt(samples, partials[6]!) / 100);
  });

  it('is the sine it says, against the sine function, for ten seconds of A0', () => {
    const partials = [{ frequency: hertz(27.5), amplitude: 1, decay: 0.1 }];
    const samples = renderSound([{ partials, from: 0, to: 10 }], rate);
    let worst = 0;
    for (let index = 1000; index < 9.9 * rate; index += 97) {
      const seconds = index / rate;
      const exact = Math.exp(-0.1 * seconds) * Math.sin(2 * Math.PI * 27.5 * seconds);
      worst = Math.max(worst, Math.abs(samples[index]! - exact));
    }
    // A 32-bit sample near 1 is rounded by up to 6e-8.
    expect(worst).toBeLessThan(1e-7);
  });

  it('is the same every time', () => {
    const note: NoteToStrike = { key: 37, string: plain, strings: 3, firstPartial: hertz(220) };
    expect(heard(note, 0.1)).toEqual(heard(note, 0.1));
  });

  it('dies away: no tenth of a second is louder than the one before', () => {
    const samples = heard({ key: 37, string: plain, strings: 1, firstPartial: hertz(220) }, 3);
    const tenths = Array.from({ length: 28 }, (_, index) =>
      rootMeanSquare(samples.subarray((index + 1) * 4410, (index + 2) * 4410)),
    );
    tenths.slice(1).forEach((level, index) => {
      expect(level).toBeLessThan(tenths[index]!);
    });
  });

  it('beats once in a period of the difference when two strings lie apart', () => {
    // Two equal sines f ± Δ/2 sum to 2·cos(π·Δ·t)·sin(2π·f·t): silent at t = 1/(2Δ). Trigonometry.
    const difference = 4;
    const partials = [-difference / 2, difference / 2].map((offset) => ({
      frequency: hertz(440 + offset),
      amplitude: 1,
      decay: 0,
    }));
    const samples = renderSound([{ partials, from: 0, to: 1 }], rate);
    const around = (seconds: number) =>
      rootMeanSquare(
        samples.subarray(Math.round((seconds - 0.005) * rate), Math.round((seconds + 0.005) * rate)),
      );
    expect(around(0.125)).toBeLessThan(around(0.25) / 15);
  });

  it('spreads a unison about its pitch', () => {
    const note = { key: 37, string: plain, firstPartial: hertz(220), unisonSpread: cents(2) } as const;
    const firsts = struckNote({ ...note, strings: 3 }).filter(({ frequency }) => frequency < 230);
    expect(firsts.map(({ frequency }) => Math.round(inCents(frequency, 220) * 1e6) / 1e6)).toEqual([
      -1, 0, 1,
    ]);
    expect(inCents(struckNote({ ...note, strings: 1 })[0]!.frequency, 220)).toBe(0);
  });

  it('refuses a partial that would fold back, and a note that ends before it begins', () => {
    const partials = [{ frequency: hertz(5000), amplitude: 1, decay: 1 }];
    expect(() => renderSound([{ partials, from: 0, to: 1 }], 8000)).toThrow(RangeError);
    expect(() => renderSound([{ partials, from: 1, to: 1 }], rate)).toThrow(/must end after it begins/);
  });
});

describe('partialDecay()', () => {
  it('has the fitted values at C4 (second publication: air 1.1 1/s, inner friction 2.7e-4 m²/s)', () => {
    expect(partialDecay({ key: 40, speakingLength: 0.62, partial: 1 })).toBeCloseTo(
      1.1 + 2.7e-4 * (Math.PI / 0.62) ** 2,
      12,
    );
  });

  it('is faster for higher partials, shorter strings and higher notes', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 87 }),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        fc.integer({ min: 1, max: 60 }),
        (key, speakingLength, partial) => {
          const here = partialDecay({ key, speakingLength, partial });
          expect(here).toBeGreaterThan(0);
          expect(partialDecay({ key, speakingLength, partial: partial + 1 })).toBeGreaterThan(here);
          expect(partialDecay({ key, speakingLength: speakingLength * 0.9, partial })).toBeGreaterThan(here);
          expect(partialDecay({ key: key + 1, speakingLength, partial })).toBeGreaterThan(here);
        },
      ),
    );
  });
});

describe('matchLevels()', () => {
  const limit = 10 ** (HEADPHONE_PEAK_DBFS / 20);
  const sound = fc
    .array(fc.float({ min: -1, max: 1, noNaN: true }), { minLength: 8, maxLength: 200 })
    .map((samples) => Float32Array.from(samples));

  it('never passes the headphone limit, and reaches it once', () => {
    fc.assert(
      fc.property(fc.array(sound, { minLength: 1, maxLength: 4 }), (sounds) => {
        const peaks = matchLevels(sounds).map((one) =>
          one.reduce((peak, x) => Math.max(peak, Math.abs(x)), 0),
        );
        for (const peak of peaks) expect(peak).toBeLessThanOrEqual(Math.fround(limit));
        if (sounds.some((one) => rootMeanSquare(one) > 0))
          expect(decibels(Math.max(...peaks), limit)).toBeGreaterThan(-0.01);
      }),
    );
  });

  it('gives two scales the same level within 0.1 dB', () => {
    const note = { key: 37, strings: 2, firstPartial: hertz(220) } as const;
    const sounds = [
      heard({ ...note, string: plain }),
      heard({ ...note, string: { ...plain, diameter: millimetres(0.9) } }),
      heard({ ...note, string: plain, strings: 1 }),
    ];
    const levels = matchLevels(sounds).map(rootMeanSquare);
    for (const level of levels) expect(Math.abs(decibels(level, levels[0]!))).toBeLessThan(0.1);
    expect(Math.abs(decibels(rootMeanSquare(sounds[2]!), rootMeanSquare(sounds[0]!)))).toBeGreaterThan(1);
  });

  it('leaves silence silent', () => {
    expect(matchLevels([new Float32Array(10)])[0]).toEqual(new Float32Array(10));
  });
});

describe('comparedSounds()', () => {
  it('leaves out what a slow sample rate cannot carry, instead of folding it back', () => {
    const note = { key: 70, string: plain, strings: 1, firstPartial: hertz(1480), from: 0, to: 0.2 } as const;
    const [sound] = comparedSounds([[{ ...note, string: { ...plain, speakingLength: metres(0.13) } }]], 8000);
    expect(sound).toHaveLength(1600);
    expect(rootMeanSquare(sound!)).toBeGreaterThan(0.001);
  });
});

describe('passages', () => {
  it('cross a break with both notes of the third, and stay on the keyboard', () => {
    const notes = thirdsAcross(31, [1, 88]);
    const thirds = notes
      .filter((_, index) => index % 2 === 0)
      .map(({ key }, index) => [key, notes[2 * index + 1]!.key]);
    expect(thirds[0]).toEqual([25, 29]);
    expect(thirds.some(([low, high]) => low! < 31 && high! >= 31)).toBe(true);
    expect(thirds.at(-1)).toEqual([32, 36]);
    expect(thirdsAcross(3, [1, 88]).every(({ key }) => key >= 1)).toBe(true);
    expect(thirdsAcross(86, [1, 88]).every(({ key }) => key <= 88)).toBe(true);
  });

  it('hold one note or an octave together', () => {
    expect(singleNote(40).map(({ key }) => key)).toEqual([40]);
    expect(octaveAbove(40).map(({ key, from }) => [key, from])).toEqual([
      [40, 0],
      [52, 0],
    ]);
  });
});
