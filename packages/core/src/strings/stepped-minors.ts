import type { SteppedString } from './stepped-string.ts';

/** What a stepped stiff string says about one frequency. */
export interface SteppedCharacteristic {
  /**
   * A smooth function of the angular frequency that is zero at the modes and nowhere else, and below zero before the
   * first of them.
   */
  readonly valueAt: (angularFrequency: number) => number;
  /** How many modes lie below an angular frequency. */
  readonly modesBelow: (angularFrequency: number) => number;
}

/*
 * A stretch without stiffness is the limit of a vanishing one. Relative to T·L² this is the stiffness that stands for
 * none: it bends the string over a length of 1e-11 · L at the ends of the stretch, and changes no digit of a frequency
 * that a double can show to more than about 1e-11.
 */
const NO_RIGIDITY = 1e-22;
/** A stretch this short beside the whole is rounding of the places where layers end. */
const NO_LENGTH = 1e-15;
/** Below this |γ|·l the closed form of a segment loses digits to cancellation, and a few terms of its series are exact. */
const SHORT_STRETCH = 0.1;
/** Terms of that series: 0.1¹²/12! is 2e-21. */
const SERIES_TERMS = 12;

/**
 * The characteristic function of a stepped stiff string, and the count of its modes.
 *
 *     E·I·y'''' − T·y'' − μ·ω²·y = 0        on every segment; y, y', E·I·y'' and T·y' − E·I·y''' continuous
 *
 * Of the four solutions the front end admits two. What is carried from front to back is not these two, which grow alike
 * until rounding makes them one, but the areas they span (their 2×2 minors) in y, y', moment M = E·I·y'' and force
 * V = T·y' − E·I·y'''. Five of the six are independent:
 *
 *     q₀ = y∧y'   q₁ = y∧M/EI   q₂ = y∧V/EI = −y'∧M/EI   q₃ = y'∧V/EI   q₄ = M∧V/EI²
 *     q₀' = q₁    q₁' = g·q₀ − 2q₂    q₂' = q₃    q₃' = q₄ + h·q₀    q₄' = g·q₃ + h·q₁      g = T/EI, h = μω²/EI
 *
 * With a, b the wave numbers of the segment (b² − a² = g, a·b = √h), κ = q₄ − g·q₂ − h·q₀ does not change along it, and
 * z = q₂ + i·a·b·q₀ obeys z'' = γ²·z + κ with γ = b − i·a. So a whole segment is one complex cosh and sinh, and
 * multiplied by e^(−b·l) it does not overflow on a long segment. On a short one, where it would lose digits, the series of the
 * same five equations takes its place. The back end is held
 * where y∧M (pinned) or y∧y' (clamped) is zero.
 *
 * The count is that of Wittrick and Williams: adding a segment to what lies before it adds the segment's own modes with
 * both its ends clamped, and as many as the joint, stiffness before plus stiffness after, has negative eigenvalues. Both
 * stiffnesses are quotients of the minors.
 *
 * @param string  checked by the caller
 * @returns functions of ω [rad/s], > 0; each takes a sine, a cosine, an exponential and two square roots a segment
 *
 * Source: minors: F. Gilbert and G. E. Backus, Geophysics 31 (1966) 326; count: W. H. Wittrick and F. W. Williams,
 * Quarterly Journal of Mechanics and Applied Mathematics 24 (1971) 263 (both from memory). The closed form of a segment is worked out
 * in docs/explanation/wound-string-modes.md.
 */
export function steppedCharacteristic(string: SteppedString): SteppedCharacteristic {
  const isPinned = string.ends === 'pinned';
  const wholeLength = string.segments.reduce((sum, segment) => sum + segment.length, 0);
  const segments = string.segments.filter((segment) => segment.length > NO_LENGTH * wholeLength);
  const count = segments.length;
  // In units of the whole length and the tension: l, EI/(T·L²), and μ·L²/T, which times ω² is dimensionless.
  const lengths = Float64Array.from(segments, (segment) => segment.length / wholeLength);
  const rigidities = Float64Array.from(segments, (segment) =>
    Math.max(segment.flexuralRigidity / (string.tension * wholeLength ** 2), NO_RIGIDITY),
  );
  const densities = Float64Array.from(
    segments,
    (segment) => (segment.linearDensity * wholeLength ** 2) / string.tension,
  );

  const minors = new Float64Array(5);
  const clamped = new Float64Array(5);
  const wave = new Float64Array(WAVE_SIZE);

  const start = (): void => {
    minors.fill(0);
    // Pinned: y and M are zero, so y'∧V is the one area. Clamped: M∧V.
    minors[isPinned ? PHI_V : M_V] = 1;
  };

  const valueAt = (angularFrequency: number): number => {
    start();
    const squared = angularFrequency ** 2;
    for (let index = 0; index < count; index += 1) {
      setWave(wave, lengths[index]!, rigidities[index]!, densities[index]! * squared);
      advance(minors, wave, rigidities[index]!);
    }
    return minors[isPinned ? U_M : U_PHI]!;
  };

  const modesBelow = (angularFrequency: number): number => {
    start();
    const squared = angularFrequency ** 2;
    let modes = 0;
    for (let index = 0; index < count; index += 1) {
      const length = lengths[index]!;
      const rigidity = rigidities[index]!;
      setWave(wave, length, rigidity, densities[index]! * squared);
      clamped.fill(0);
      clamped[M_V] = 1;
      advance(clamped, wave, rigidity);

      // Stiffness of this segment at its front joint, its back end clamped: quotients of minors, seen from the other end.
      const forceByShift = -clamped[PHI_V]! / clamped[U_PHI]!;
      const forceByTurn = -clamped[U_V]! / clamped[U_PHI]!;
      const momentByTurn = clamped[U_M]! / clamped[U_PHI]!;

      modes += clampedModes(wave[A]! * length, clamped[U_PHI]!);
      if (index > 0) {
        modes += negativeEigenvalues(
          forceByShift - minors[PHI_V]! / minors[U_PHI]!,
          forceByTurn + minors[U_V]! / minors[U_PHI]!,
          momentByTurn + minors[U_M]! / minors[U_PHI]!,
        );
      } else if (isPinned && momentByTurn < 0) {
        modes += 1;
      }
      advance(minors, wave, rigidity);
    }
    // Letting the back end turn frees one more mode where the moment that holds it straight is negative.
    if (isPinned && minors[U_M]! / minors[U_PHI]! < 0) modes += 1;
    return modes;
  };

  return { valueAt, modesBelow };
}

// Places in the array of minors: displacement u, slope φ, moment M, force V.
const U_PHI = 0;
const U_M = 1;
const U_V = 2;
const PHI_V = 3;
const M_V = 4;

// Places in the array of what a segment does to waves of one frequency.
const A = 0; // a, of the travelling waves
const B = 1; // b, of the waves that die away
const TENSION = 2; // g = b² − a²
const COSH_RE = 3; // cosh(γl) and sinh(γl)/γ, times e^(−bl)
const COSH_IM = 4;
const SINH_RE = 5;
const SINH_IM = 6;
const DECAY = 7; // e^(−bl)
const GROWTH_RE = 8; // γ · sinh(γl), times e^(−bl)
const GROWTH_IM = 9;
const LESS_ONE_RE = 10; // cosh(γl) − 1, times e^(−bl)
const LESS_ONE_IM = 11;
const LENGTH = 12; // l, and 1 in the next place where the segment is short
const IS_SHORT = 13;
const WAVE_SIZE = 14;

/** Fills `wave` for one segment; T = 1, so that g = 1/EI and h = μω²/EI. */
function setWave(wave: Float64Array, length: number, rigidity: number, inertia: number): void {
  const root = 1 + Math.sqrt(1 + 4 * rigidity * inertia);
  const b = Math.sqrt(root / (2 * rigidity));
  // This is really a² = (−1 + √(1 + 4·EI·μω²)) / 2EI, arranged to avoid cancellation.
  const a = Math.sqrt((2 * inertia) / root);
  // Everything from the half segment: e^(−bl/2)·sinh(γl/2) and the angles, doubled without loss.
  const halfCos = Math.cos((a * length) / 2);
  const halfSin = Math.sin((a * length) / 2);
  const lost = Math.expm1(-b * length);
  const halfRe = (-lost / 2) * halfCos;
  const halfIm = -(1 + lost / 2) * halfSin;
  const cos = (halfCos - halfSin) * (halfCos + halfSin);
  const sin = 2 * halfSin * halfCos;
  const sinhB = (-lost * (lost + 2)) / 2; // e^(−bl)·sinh(bl)
  const coshB = 1 - sinhB; // e^(−bl)·cosh(bl)
  const sinhRe = sinhB * cos;
  const sinhIm = -coshB * sin;
  const size = a * a + b * b;
  wave[A] = a;
  wave[B] = b;
  wave[TENSION] = 1 / rigidity;
  wave[DECAY] = 1 + lost;
  wave[LENGTH] = length;
  wave[IS_SHORT] = size * length * length < SHORT_STRETCH ** 2 ? 1 : 0;
  wave[COSH_RE] = coshB * cos;
  wave[COSH_IM] = -sinhB * sin;
  // sinh(γl)/γ with 1/γ = (b + ia)/(a² + b²)
  wave[SINH_RE] = (sinhRe * b - sinhIm * a) / size;
  wave[SINH_IM] = (sinhRe * a + sinhIm * b) / size;
  wave[GROWTH_RE] = sinhRe * b + sinhIm * a;
  wave[GROWTH_IM] = sinhIm * b - sinhRe * a;
  // This is really cosh(γl) − 1, arranged as 2·sinh²(γl/2) to keep its digits on a short segment.
  wave[LESS_ONE_RE] = 2 * (halfRe * halfRe - halfIm * halfIm);
  wave[LESS_ONE_IM] = 4 * halfRe * halfIm;
}

/** Carries the minors across a segment, times e^(−bl). */
function advance(minors: Float64Array, wave: Float64Array, rigidity: number): void {
  if (wave[IS_SHORT] === 1) {
    advanceBySeries(minors, wave, rigidity);
    return;
  }
  const a = wave[A]!;
  const b = wave[B]!;
  const ab = a * b;
  const g = wave[TENSION]!;
  const q0 = minors[U_PHI]!;
  const q1 = minors[U_M]! / rigidity;
  const q2 = minors[U_V]! / rigidity;
  const q3 = minors[PHI_V]! / rigidity;
  const q4 = minors[M_V]! / (rigidity * rigidity);
  const kappa = q4 - g * q2 - ab * ab * q0;

  // z(l) = z·cosh γl + z'·sinh(γl)/γ + κ·(cosh γl − 1)/γ²        1/γ² = (g + 2iab)/(a² + b²)²
  const size = (a * a + b * b) ** 2;
  const byRe = (kappa * g) / size;
  const byIm = (kappa * 2 * ab) / size;
  const zRe = q2;
  const zIm = ab * q0;
  const slopeRe = q3;
  const slopeIm = ab * q1;
  const backRe =
    zRe * wave[COSH_RE]! -
    zIm * wave[COSH_IM]! +
    slopeRe * wave[SINH_RE]! -
    slopeIm * wave[SINH_IM]! +
    byRe * wave[LESS_ONE_RE]! -
    byIm * wave[LESS_ONE_IM]!;
  const backIm =
    zRe * wave[COSH_IM]! +
    zIm * wave[COSH_RE]! +
    slopeRe * wave[SINH_IM]! +
    slopeIm * wave[SINH_RE]! +
    byRe * wave[LESS_ONE_IM]! +
    byIm * wave[LESS_ONE_RE]!;
  // z'(l) = (z + κ/γ²)·γ·sinh γl + z'·cosh γl
  const shiftedRe = zRe + byRe;
  const shiftedIm = zIm + byIm;
  const backSlopeRe =
    shiftedRe * wave[GROWTH_RE]! -
    shiftedIm * wave[GROWTH_IM]! +
    slopeRe * wave[COSH_RE]! -
    slopeIm * wave[COSH_IM]!;
  const backSlopeIm =
    shiftedRe * wave[GROWTH_IM]! +
    shiftedIm * wave[GROWTH_RE]! +
    slopeRe * wave[COSH_IM]! +
    slopeIm * wave[COSH_RE]!;

  const back0 = backIm / ab;
  minors[U_PHI] = back0;
  minors[U_M] = (rigidity * backSlopeIm) / ab;
  minors[U_V] = rigidity * backRe;
  minors[PHI_V] = rigidity * backSlopeRe;
  minors[M_V] = rigidity * rigidity * (kappa * wave[DECAY]! + g * backRe + ab * ab * back0);
}

/** The same by q(l) = Σ (l·d/dx)ᵏ q / k!, every derivative from the five equations. */
function advanceBySeries(minors: Float64Array, wave: Float64Array, rigidity: number): void {
  const length = wave[LENGTH]!;
  const g = wave[TENSION]!;
  const h = (wave[A]! * wave[B]!) ** 2;
  let q0 = minors[U_PHI]!;
  let q1 = minors[U_M]! / rigidity;
  let q2 = minors[U_V]! / rigidity;
  let q3 = minors[PHI_V]! / rigidity;
  let q4 = minors[M_V]! / (rigidity * rigidity);
  let [s0, s1, s2, s3, s4] = [q0, q1, q2, q3, q4];
  for (let term = 1; term <= SERIES_TERMS; term += 1) {
    const step = length / term;
    const next0 = step * q1;
    const next1 = step * (g * q0 - 2 * q2);
    const next2 = step * q3;
    const next3 = step * (q4 + h * q0);
    const next4 = step * (g * q3 + h * q1);
    q0 = next0;
    q1 = next1;
    q2 = next2;
    q3 = next3;
    q4 = next4;
    s0 += q0;
    s1 += q1;
    s2 += q2;
    s3 += q3;
    s4 += q4;
  }
  const scale = wave[DECAY]!;
  minors[U_PHI] = scale * s0;
  minors[U_M] = scale * rigidity * s1;
  minors[U_V] = scale * rigidity * s2;
  minors[PHI_V] = scale * rigidity * s3;
  minors[M_V] = scale * rigidity * rigidity * s4;
}

/**
 * Modes of one segment with both ends clamped, below the frequency at which its waves turn by `phase` = a·l.
 * There is one in each interval iπ < a·l < (i + 1)π from i = 1 on; whether it is passed shows in the sign of y∧y'.
 */
function clampedModes(phase: number, slopeArea: number): number {
  const halfWaves = Math.floor(phase / Math.PI);
  const parity = halfWaves % 2 === 0 ? 1 : -1;
  const sign = slopeArea <= 0 ? 1 : -1;
  return halfWaves - (1 - parity * sign) / 2;
}

/** Negative eigenvalues of [[p, q], [q, r]]. */
function negativeEigenvalues(p: number, q: number, r: number): number {
  const determinant = p * r - q * q;
  if (determinant < 0) return 1;
  return p + r < 0 ? 2 : 0;
}
