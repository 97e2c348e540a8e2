import { type Hertz, hertz } from '../units/index.ts';
import { bracketedRoot } from './modes-bracketed-root.ts';
import { requireSteppedString, type Solved, type SteppedString } from './stepped-string.ts';

/**
 * The first modes of a stepped string without stiffness.
 *
 *     T·y'' + μ·ω²·y = 0 on every segment; y and y' continuous; y = 0 at both ends
 *
 * With y = r·sin θ and y' = r·k·cos θ, k = ω·√(μ/T), the phase θ gains k·l along a segment, and at a joint keeps its half
 * wave while tan θ changes by the ratio of the wave numbers. The phase at the back end grows with ω, and passes n·π at mode n:
 * no mode can be missed.
 *
 * @param string  flexural rigidities and the kind of ends are ignored: without stiffness both ends are alike
 * @param count   how many modes, 1 or more
 * @returns frequencies [Hz]; `count` values, index 0 = mode 1
 *
 * Holds for: any number of segments and any ratio of their densities.
 * Error: rounding only, some 1e-14.
 * Throws: RangeError when a dimension is not positive.
 * Source: H. Prüfer's angle, Mathematische Annalen 95 (1926) 499 (from memory).
 */
export function flexibleStringModes(
  string: Pick<SteppedString, 'segments' | 'tension'>,
  count = 16,
): Solved<Hertz[]> {
  requireSteppedString({ ...string, ends: 'pinned' }, 'the modes of a flexible string');
  const { segments, tension } = string;
  const slownesses = segments.map((segment) => Math.sqrt(segment.linearDensity / tension));
  const turnPerOmega = segments.map((segment, index) => segment.length * slownesses[index]!);
  const roundTrip = turnPerOmega.reduce((sum, turn) => sum + turn, 0);

  const phaseAt = (omega: number): number => {
    let phase = 0;
    segments.forEach((_, index) => {
      if (index > 0) {
        const halfWaves = Math.round(phase / Math.PI);
        const rest = phase - halfWaves * Math.PI;
        const ratio = slownesses[index]! / slownesses[index - 1]!;
        phase = halfWaves * Math.PI + Math.atan2(ratio * Math.sin(rest), Math.cos(rest));
      }
      phase += omega * turnPerOmega[index]!;
    });
    return phase;
  };

  const frequencies: Hertz[] = [];
  let iterations = 0;
  let residual = 0;
  for (let mode = 1; mode <= count; mode += 1) {
    // A joint shifts the phase by less than a quarter turn, never past a half wave: the mode is that near to n·π.
    const target = mode * Math.PI;
    const lastShift = (segments.length - 1) * (Math.PI / 2);
    const low = Math.max(0, (target - lastShift) / roundTrip) * (1 - 1e-12);
    const high = ((target + lastShift) / roundTrip) * (1 + 1e-12);
    const found = bracketedRoot((omega) => phaseAt(omega) - target, low, high);
    frequencies.push(hertz(found.root / (2 * Math.PI)));
    iterations += found.evaluations;
    residual = Math.max(residual, found.width);
  }
  return { value: frequencies, iterations, residual, converged: residual < 1e-12 };
}
