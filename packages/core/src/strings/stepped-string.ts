import {
  type KilogramsPerMetre,
  type Metres,
  type NewtonSquareMetres,
  type Newtons,
  requireNotNegative,
  requirePositive,
} from '../units/index.ts';

/** A stretch of string along which mass and stiffness do not change. */
export interface StringSegment {
  readonly length: Metres;
  readonly linearDensity: KilogramsPerMetre;
  /** E·I; 0 is a perfectly flexible stretch. */
  readonly flexuralRigidity: NewtonSquareMetres;
}

/**
 * How both ends are held. Neither lets the string move sideways; a pinned end lets it turn, a clamped end does not.
 * A real termination lies between the two, close to pinned.
 */
export type StringEnds = 'pinned' | 'clamped';

/** A string made of stretches that differ in mass, stiffness or both, front to back, under one tension. */
export interface SteppedString {
  readonly segments: readonly StringSegment[];
  readonly tension: Newtons;
  readonly ends: StringEnds;
}

/** How an iteration ended. */
export interface Solved<Value> {
  readonly value: Value;
  readonly iterations: number;
  /** Width of the interval that still holds the answer, relative to it; of several answers the widest. */
  readonly residual: number;
  readonly converged: boolean;
}

/** Throws a RangeError that names the part when a stepped string cannot exist. */
export function requireSteppedString(string: SteppedString, task: string): void {
  requirePositive(string.tension, 'tension', task);
  requireSegments(string.segments, task);
}

export function requireSegments(segments: readonly StringSegment[], task: string): void {
  if (segments.length === 0) {
    throw new RangeError(`Cannot compute ${task} as at least one segment is needed: none was given`);
  }
  segments.forEach((segment, index) => {
    const which = `segment ${index + 1}`;
    requirePositive(segment.length, `length of ${which}`, task);
    requirePositive(segment.linearDensity, `mass per length of ${which}`, task);
    requireNotNegative(segment.flexuralRigidity, `flexural rigidity of ${which}`, task);
  });
}
