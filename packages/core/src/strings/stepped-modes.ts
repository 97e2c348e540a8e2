import { type Hertz, hertz } from '../units/index.ts';
import { bracketedRoot } from './modes-bracketed-root.ts';
import { type SteppedCharacteristic, steppedCharacteristic } from './stepped-minors.ts';
import { requireSteppedString, type Solved, type SteppedString } from './stepped-string.ts';

/** Two modes nearer than this, relative, cannot be told apart and are given as one twice. */
const NEAREST_MODES = 1e-13;

/**
 * The first modes of a stepped stiff string, exactly.
 *
 *     E·I·y'''' − T·y'' − μ·ω²·y = 0        on every segment
 *
 * The count of modes below a frequency splits the axis until each interval holds one mode; in it the characteristic function
 * changes sign once, and a bracketed search ends at the last digits. See `steppedCharacteristic` for both.
 *
 * @param string.segments  front to back, each with l [m], μ [kg/m] and EI [N·m²] (0 where it does not resist bending)
 * @param string.tension   T [N], > 0
 * @param string.ends      pinned or clamped, both alike
 * @param count            how many modes, 1 or more
 * @returns frequencies [Hz]; `count` values, index 0 = mode 1
 *
 * Holds for: thin strings, whose cross-sections turn with the slope (no shear, no rotary inertia), held fast at both ends.
 * A bridge that yields shifts low partials by more than the rounding of this result.
 * Error: 1e-12 from the method; what the string's dimensions are worth decides.
 * Throws: RangeError when a dimension is not positive.
 * Source: equation: H. Fletcher, J. Acoust. Soc. Am. 36 (1964) 203. Method: see `steppedCharacteristic`, and the decision
 * record docs/decisions/0002-modes-by-minors.md.
 * @example  steppedStringModes({ segments: [{ length: metres(1), linearDensity: kilogramsPerMetre(0.01), flexuralRigidity: newtonSquareMetres(0.1) }], tension: newtons(1000), ends: 'pinned' }).value[9]  // ≈ 1657.33 Hz
 */
export function steppedStringModes(string: SteppedString, count = 16): Solved<Hertz[]> {
  requireSteppedString(string, 'the modes of a stepped string');
  const { valueAt, modesBelow } = steppedCharacteristic(string);
  let iterations = 0;
  let residual = 0;
  const counted = (omega: number): number => {
    iterations += 1;
    const modes = modesBelow(omega);
    if (!Number.isInteger(modes) || !Number.isFinite(omega)) {
      throw new RangeError(
        'Cannot compute the modes of a stepped string as its lengths, masses or stiffnesses lie too many powers of ten apart',
      );
    }
    return modes;
  };

  // Half a wave beyond the last mode of a flexible string of the same travel time; then outwards until it is enough.
  const travelTime = string.segments.reduce(
    (sum, segment) => sum + segment.length * Math.sqrt(segment.linearDensity / string.tension),
    0,
  );
  let top = ((count + 0.5) * Math.PI) / travelTime;
  let modesBelowTop = counted(top);
  while (modesBelowTop < count) {
    top *= 1.25;
    modesBelowTop = counted(top);
  }

  const frequencies: Hertz[] = [];
  const collect = (low: number, modesBelowLow: number, high: number, modesBelowHigh: number): void => {
    if (modesBelowLow >= count || modesBelowHigh === modesBelowLow) return;
    if (modesBelowHigh - modesBelowLow === 1) {
      const mode = singleMode(valueAt, modesBelow, low, high, modesBelowLow);
      iterations += mode.evaluations;
      residual = Math.max(residual, mode.width);
      frequencies.push(hertz(mode.root / (2 * Math.PI)));
      return;
    }
    if (high - low <= NEAREST_MODES * high) {
      residual = Math.max(residual, (high - low) / high);
      for (let mode = modesBelowLow; mode < Math.min(modesBelowHigh, count); mode += 1) {
        frequencies.push(hertz(high / (2 * Math.PI)));
      }
      return;
    }
    const middle = (low + high) / 2;
    // Next to a mode rounding decides the count; kept between its neighbours' it cannot lead the search astray.
    const modesBelowMiddle = Math.min(Math.max(counted(middle), modesBelowLow), modesBelowHigh);
    collect(low, modesBelowLow, middle, modesBelowMiddle);
    collect(middle, modesBelowMiddle, high, modesBelowHigh);
  };
  collect(0, 0, top, modesBelowTop);
  return { value: frequencies, iterations, residual, converged: residual < 1e-11 };
}

/** The one mode between two frequencies: by the sign of the smooth function, or where rounding hides it, by the count. */
function singleMode(
  valueAt: SteppedCharacteristic['valueAt'],
  modesBelow: SteppedCharacteristic['modesBelow'],
  low: number,
  high: number,
  modesBelowLow: number,
): { root: number; evaluations: number; width: number } {
  // The function is below zero before the first mode, so its sign says whether the modes passed are odd or even.
  const signBelow = modesBelowLow % 2 === 0 ? -1 : 1;
  const safeLow = low === 0 ? high * 1e-9 : low;
  if (signBelow * valueAt(safeLow) > 0 && signBelow * valueAt(high) < 0) {
    return bracketedRoot(valueAt, safeLow, high);
  }
  let [below, above] = [low, high];
  let evaluations = 0;
  while (above - below > NEAREST_MODES * above) {
    const middle = (below + above) / 2;
    if (modesBelow(middle) > modesBelowLow) above = middle;
    else below = middle;
    evaluations += 1;
  }
  return { root: above, evaluations, width: (above - below) / above };
}
