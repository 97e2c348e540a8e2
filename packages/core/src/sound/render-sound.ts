import { requirePositive } from '../units/index.ts';
import { english, type Language } from '../words/index.ts';
import type { SoundingPartial } from './struck-note.ts';

/** A note with its place in time. */
export interface TimedNote {
  readonly partials: readonly SoundingPartial[];
  /** When it is struck, from the beginning [s]. */
  readonly from: number;
  /** When it is damped [s]. */
  readonly to: number;
}

/** Fade of every note at its beginning and at its end [s]: long enough that nothing clicks. */
const FADE_IN = 0.004;
const FADE_OUT = 0.08;
/** A partial that has fallen so far below its beginning is let go: 100 dB. */
const INAUDIBLE = 1e-5;

/**
 * The sound of notes struck one after another or together.
 *
 *     y(t) = Σ a · e^(−σ·t) · sin(2π·f·t)
 *
 * Every partial starts at rest, as a string does, and every note fades in and out along half a cosine.
 *
 * @param notes       in any order; they may overlap
 * @param sampleRate  [Hz], > 0
 * @returns samples without unit, one channel; not levelled: see `matchLevels`
 *
 * Error: each sine is a recurrence in double precision; within the rounding of a 32-bit sample after ten seconds of A0.
 * Throws: RangeError when the sample rate is not positive, a note ends before it begins, or a partial lies above half the
 * sample rate.
 * Source: the sum of the modes of a linear string; see `struckNote` for amplitudes and decay.
 * @example  renderSound([{ partials: [{ frequency: hertz(100), amplitude: 1, decay: 1 }], from: 0, to: 0.5 }], 8000).length  // = 4000
 */
export function renderSound(
  notes: readonly TimedNote[],
  sampleRate: number,
  language: Language = english,
): Float32Array {
  const task = 'a sound';
  requirePositive(sampleRate, 'the sample rate', task);
  const seconds = notes.reduce((longest, { to }) => Math.max(longest, to), 0);
  const sum = new Float64Array(Math.round(seconds * sampleRate));
  for (const { partials, from, to } of notes) {
    if (!(from >= 0 && to > from)) {
      throw new RangeError(
        `Cannot compute ${task} as a note must end after it begins, at 0 s or later: found ${from} s to ${to} s`,
      );
    }
    const first = Math.round(from * sampleRate);
    const fades = noteFades(Math.min(Math.round(to * sampleRate), sum.length) - first, sampleRate);
    for (const partial of partials) addPartial(sum, first, fades, partial, { sampleRate, language });
  }
  return Float32Array.from(sum);
}

function addPartial(
  sum: Float64Array,
  first: number,
  fades: Float64Array,
  { frequency, amplitude, decay }: SoundingPartial,
  { sampleRate, language: { say, plain } }: { readonly sampleRate: number; readonly language: Language },
): void {
  if (frequency >= sampleRate / 2) {
    throw new RangeError(
      say(
        'Cannot compute a sound as every partial must lie below half the sample rate of {rate} Hz: found {frequency} Hz',
        { rate: plain(sampleRate), frequency: plain(frequency) },
      ),
    );
  }
  if (amplitude === 0) return;
  // y[i] = 2·r·cos θ · y[i−1] − r² · y[i−2] is r^i · sin(θ·i), one multiplication each instead of a sine.
  const angle = (2 * Math.PI * frequency) / sampleRate;
  const perSample = Math.exp(-decay / sampleRate);
  const [one, two] = [2 * perSample * Math.cos(angle), -(perSample ** 2)];
  let before = 0;
  let here = amplitude * perSample * Math.sin(angle);
  const audible = decay > 0 ? Math.ceil((-Math.log(INAUDIBLE) / decay) * sampleRate) : fades.length;
  const last = Math.min(fades.length, audible);
  for (let index = 1; index < last; index += 1) {
    sum[first + index]! += here * fades[index]!;
    const next = one * here + two * before;
    before = here;
    here = next;
  }
}

function noteFades(length: number, sampleRate: number): Float64Array {
  const fades = new Float64Array(length).fill(1);
  const ramp = (seconds: number) => Math.min(Math.round(seconds * sampleRate), Math.floor(length / 2));
  const [rise, fall] = [ramp(FADE_IN), ramp(FADE_OUT)];
  for (let index = 0; index < rise; index += 1)
    fades[index]! *= 0.5 - 0.5 * Math.cos((Math.PI * index) / rise);
  for (let index = 0; index < fall; index += 1)
    fades[length - 1 - index]! *= 0.5 - 0.5 * Math.cos((Math.PI * index) / fall);
  return fades;
}
