/**
 * Guards for the inputs of a calculation page. Each throws a RangeError whose message says what could not be
 * done, what is needed and what was found.
 */

/** Returns `value` when it is a finite number above zero. */
export function requirePositive(value: number, name: string, task: string): number {
  if (!(Number.isFinite(value) && value > 0)) {
    throw new RangeError(`Cannot compute ${task} as ${name} must be > 0: current value is ${value}`);
  }
  return value;
}

/** Returns `value` when it is a finite number, zero or above. */
export function requireNotNegative(value: number, name: string, task: string): number {
  if (!(Number.isFinite(value) && value >= 0)) {
    throw new RangeError(`Cannot compute ${task} as ${name} must be ≥ 0: current value is ${value}`);
  }
  return value;
}

/** Returns `value` when it is a finite number from `low` to `high`, both included. */
export function requireWithin(value: number, low: number, high: number, name: string, task: string): number {
  if (!(Number.isFinite(value) && value >= low && value <= high)) {
    throw new RangeError(
      `Cannot compute ${task} as ${name} must be from ${low} to ${high}: current value is ${value}`,
    );
  }
  return value;
}
