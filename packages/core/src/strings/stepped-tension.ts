import { type Hertz, type Newtons, newtons, requirePositive } from '../units/index.ts';
import { bracketedRoot } from './modes-bracketed-root.ts';
import { flexibleStringModes } from './stepped-flexible.ts';
import { type SteppedCharacteristic, steppedCharacteristic } from './stepped-minors.ts';
import { requireSegments, type Solved, type StringEnds, type StringSegment } from './stepped-string.ts';

/**
 * Tension at which the first mode of a stepped string without stiffness has a given frequency.
 *
 *     T = T₁ · (f / f₁)²        f₁ the first mode at any tension T₁, since all modes go with √T
 *
 * @param segments   front to back; flexural rigidities are ignored
 * @param frequency  f [Hz], > 0
 * @returns T [N]
 *
 * Holds for: a flexible string with fixed ends. Error: rounding only.
 * Throws: RangeError when a dimension or the frequency is not positive.
 * Source: the modes of `flexibleStringModes`.
 * @example  flexibleTensionAtPitch([{ length: metres(1), linearDensity: kilogramsPerMetre(0.01), flexuralRigidity: newtonSquareMetres(0) }], hertz(100)).value  // ≈ 400 N
 */
export function flexibleTensionAtPitch(
  segments: readonly StringSegment[],
  frequency: Hertz,
): Solved<Newtons> {
  requirePositive(frequency, 'frequency', 'the tension of a stepped string');
  const trial = newtons(1000);
  const modes = flexibleStringModes({ segments, tension: trial }, 1);
  return { ...modes, value: newtons(trial * (frequency / modes.value[0]!) ** 2) };
}

/** Below this share of the flexible tension a string counts as slack: it is its stiffness that sounds. */
const SLACK = 1e-6;

/**
 * Tension at which the first mode of a stepped stiff string has a given frequency.
 *
 * The tension is sought at the fixed frequency, where the characteristic function changes sign: below that of the
 * flexible string, for stiffness raises every mode.
 *
 * @param string.segments   front to back
 * @param string.frequency  f, the first partial [Hz], > 0
 * @param string.ends       pinned or clamped
 * @returns T [N]
 *
 * Holds for: strings that still need tension to reach the pitch.
 * Error: rounding only, some 1e-12.
 * Throws: RangeError when a dimension is not positive, and when stiffness alone already sounds higher than asked.
 * Source: see `steppedStringModes`.
 * @example  stiffTensionAtPitch({ segments: [{ length: metres(1), linearDensity: kilogramsPerMetre(0.01), flexuralRigidity: newtonSquareMetres(0.1) }], frequency: hertz(100), ends: 'pinned' }).value  // ≈ 399.013 N
 */
export function stiffTensionAtPitch(string: {
  segments: readonly StringSegment[];
  frequency: Hertz;
  ends: StringEnds;
}): Solved<Newtons> {
  const { segments, frequency, ends } = string;
  const task = 'the tension of a stepped stiff string';
  requireSegments(segments, task);
  const flexible = flexibleTensionAtPitch(segments, frequency);
  if (segments.every((segment) => segment.flexuralRigidity === 0)) return flexible;

  const omega = 2 * Math.PI * frequency;
  const at = (tension: number): SteppedCharacteristic =>
    steppedCharacteristic({ segments, tension: newtons(tension), ends });
  let iterations = flexible.iterations;

  const modesBelowPitch = (tension: number): number => {
    iterations += 1;
    return at(tension).modesBelow(omega);
  };

  // Downwards in growing steps, then by halves, until the first mode has sunk below the pitch: it lies between two tensions.
  let high = flexible.value as number;
  let low = high;
  let modesBelow = 0;
  for (let step = 1e-4; modesBelow === 0; step *= 4) {
    high = low;
    low = step < 0.5 ? flexible.value * (1 - step) : low / 2;
    if (low < SLACK * flexible.value) {
      throw new RangeError(
        `Cannot compute ${task} as it must need tension to reach ${frequency} Hz: its stiffness alone already sounds higher`,
      );
    }
    modesBelow = modesBelowPitch(low);
  }
  // Where the second mode has sunk with it, up again until the interval holds the first alone.
  while (modesBelow > 1 && high - low > 1e-12 * high) {
    const middle = (low + high) / 2;
    const modes = modesBelowPitch(middle);
    if (modes === 0) high = middle;
    else {
      low = middle;
      modesBelow = modes;
    }
  }
  const valueAt = (tension: number): number => at(tension).valueAt(omega);
  // The flexible tension can be the answer to the last digit, where the sign there is down to rounding.
  if (high === flexible.value) high *= 1 + 1e-9;
  const found = bracketedRoot(valueAt, low, high);
  return {
    value: newtons(found.root),
    iterations: iterations + found.evaluations,
    residual: found.width,
    converged: found.width < 1e-11,
  };
}
