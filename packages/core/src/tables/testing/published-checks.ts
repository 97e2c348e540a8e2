import { expect } from 'vitest';
import checks from '../../../../../checks/checks.json' with { type: 'json' };

/** One published value from checks/checks.json, as tests use it. */
export interface PublishedCheck {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: number;
  readonly unit: string;
  readonly tolerance: { readonly abs?: number; readonly rel?: number };
  readonly source: string;
  readonly confidence: string;
}

/** The published values whose id matches; a pattern that matches nothing is a mistake in the test. */
export function publishedChecks(pattern: RegExp): PublishedCheck[] {
  const found = (checks as unknown as PublishedCheck[]).filter((check) => pattern.test(check.id));
  if (found.length === 0) throw new RangeError(`No published check has an id like ${pattern}`);
  return found;
}

/** An input of a check by its name; missing is a mistake in the test. */
export function inputOf(check: PublishedCheck, name: string): number {
  const value = check.inputs[name];
  if (value === undefined) throw new RangeError(`Check ${check.id} has no input ${name}`);
  return value;
}

/** Expects a value, in the unit of the check, within the tolerance that was published with it. */
export function expectPublished(check: PublishedCheck, value: number): void {
  const allowed = check.tolerance.abs ?? (check.tolerance.rel ?? 0) * Math.abs(check.expected);
  expect(allowed, `${check.id} needs a tolerance`).toBeGreaterThan(0);
  expect(
    Math.abs(value - check.expected),
    `${check.id}: ${value} against ${check.expected} ${check.unit} ± ${allowed}; ${check.source}`,
  ).toBeLessThanOrEqual(allowed * (1 + 1e-9));
}
