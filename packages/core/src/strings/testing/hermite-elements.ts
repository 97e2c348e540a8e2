import type { SteppedString } from '../stepped-string.ts';

/**
 * The modes of a stepped stiff string by finite elements: slow, approximate, and with nothing in common with the
 * method of minors. Cubic Hermite elements (deflection and slope at each joint), consistent mass, tension as the
 * stiffness of the slope; the eigenvalues by bisection on the count of negative pivots of K − ω²·M.
 * Source: any text on finite elements, e.g. K.-J. Bathe, Finite Element Procedures (from memory).
 *
 * @param elementsPerMode  elements in half a wave of the last mode; the error falls with its fourth power
 * @returns frequencies [Hz]
 */
export function hermiteModes(string: SteppedString, count: number, elementsPerMode = 10): number[] {
  const { stiffness, inertia, size } = assemble(string, count, elementsPerMode);
  const travelTime = string.segments.reduce(
    (sum, segment) => sum + segment.length * Math.sqrt(segment.linearDensity / string.tension),
    0,
  );
  let top = ((count + 1) * Math.PI) / travelTime;
  const countBelow = (omega: number): number => negativePivots(stiffness, inertia, omega ** 2, size);
  while (countBelow(top) < count) top *= 1.5;

  const frequencies: number[] = [];
  let floor = 0;
  for (let mode = 0; mode < count; mode += 1) {
    let low = floor;
    let high = top;
    while (high - low > 1e-11 * high) {
      const middle = (low + high) / 2;
      if (countBelow(middle) > mode) high = middle;
      else low = middle;
    }
    frequencies.push(high / (2 * Math.PI));
    floor = low;
  }
  return frequencies;
}

/** Rows of the lower band, diagonal first: an element couples four neighbours. */
const BAND = 4;

function assemble(string: SteppedString, count: number, elementsPerMode: number) {
  const wholeLength = string.segments.reduce((sum, segment) => sum + segment.length, 0);
  const elements = string.segments.flatMap((segment) => {
    const longest = wholeLength / (count * elementsPerMode);
    // Where something changes, the string bends over a length of √(EI/T): elements grow from a part of it.
    const bend = Math.sqrt(segment.flexuralRigidity / string.tension);
    const shortest = Math.min(longest, (3 * bend) / elementsPerMode);
    return gradedLengths(segment.length, shortest, longest, 1 + 2.5 / elementsPerMode).map((length) => ({
      length,
      mu: segment.linearDensity as number,
      rigidity: segment.flexuralRigidity as number,
    }));
  });
  const all = 2 * (elements.length + 1);
  const stiffness = Array.from({ length: all }, () => new Float64Array(BAND));
  const inertia = Array.from({ length: all }, () => new Float64Array(BAND));
  elements.forEach(({ length: l, mu, rigidity }, index) => {
    const bending = [
      [12, 6 * l, -12, 6 * l],
      [6 * l, 4 * l * l, -6 * l, 2 * l * l],
      [-12, -6 * l, 12, -6 * l],
      [6 * l, 2 * l * l, -6 * l, 4 * l * l],
    ];
    const pulling = [
      [36, 3 * l, -36, 3 * l],
      [3 * l, 4 * l * l, -3 * l, -l * l],
      [-36, -3 * l, 36, -3 * l],
      [3 * l, -l * l, -3 * l, 4 * l * l],
    ];
    const mass = [
      [156, 22 * l, 54, -13 * l],
      [22 * l, 4 * l * l, 13 * l, -3 * l * l],
      [54, 13 * l, 156, -22 * l],
      [-13 * l, -3 * l * l, -22 * l, 4 * l * l],
    ];
    for (let row = 0; row < 4; row += 1) {
      for (let column = 0; column <= row; column += 1) {
        const at = 2 * index + row;
        stiffness[at]![row - column]! +=
          (rigidity / l ** 3) * bending[row]![column]! + (string.tension / (30 * l)) * pulling[row]![column]!;
        inertia[at]![row - column]! += ((mu * l) / 420) * mass[row]![column]!;
      }
    }
  });
  // Held: both deflections; when clamped, both slopes too. A held one gets a diagonal of 1 and no mass.
  const held = string.ends === 'pinned' ? [0, all - 2] : [0, 1, all - 2, all - 1];
  for (const at of held) {
    for (let step = 0; step < BAND; step += 1) {
      stiffness[at]![step] = step === 0 ? 1 : 0;
      inertia[at]![step] = 0;
      if (step > 0 && at + step < all) {
        stiffness[at + step]![step] = 0;
        inertia[at + step]![step] = 0;
      }
    }
  }
  return { stiffness, inertia, size: all };
}

/** Lengths that grow by a factor each from both ends of a stretch, and add up to it. */
function gradedLengths(total: number, shortest: number, longest: number, growth: number): number[] {
  const half: number[] = [];
  let covered = 0;
  for (
    let next = Math.min(shortest, total / 4);
    covered < total / 2;
    next = Math.min(next * growth, longest)
  ) {
    half.push(next);
    covered += next;
  }
  const scale = total / 2 / covered;
  const lengths = half.map((length) => length * scale);
  return [...lengths, ...lengths.toReversed()];
}

/** Number of negative pivots in the LDLᵀ factors of K − λ·M: the number of eigenvalues below λ (Sylvester). */
function negativePivots(
  stiffness: readonly Float64Array[],
  inertia: readonly Float64Array[],
  eigenvalue: number,
  size: number,
): number {
  // factor[i][s] is L(i, i − s) · D(i − s) while in work, then L; pivots in place 0.
  const factor = stiffness.map((row, at) =>
    row.map((value, step) => value - eigenvalue * inertia[at]![step]!),
  );
  let negative = 0;
  for (let row = 0; row < size; row += 1) {
    const current = factor[row]!;
    for (let step = Math.min(BAND - 1, row); step >= 0; step -= 1) {
      const column = row - step;
      let value = current[step]!;
      for (let inner = Math.max(row - BAND + 1, column - BAND + 1, 0); inner < column; inner += 1) {
        const pivot = factor[inner]![0]!;
        value -= current[row - inner]! * factor[column]![column - inner]! * pivot;
      }
      current[step] = step === 0 ? value : value / factor[column]![0]!;
    }
    if (current[0]! < 0) negative += 1;
  }
  return negative;
}
