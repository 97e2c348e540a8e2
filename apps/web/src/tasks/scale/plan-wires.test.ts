import type { InferredWireSizes } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { wiresOnShelf, wiresToUse } from './plan-wires.ts';

const sizes = (lattice: 'US' | 'metric' | undefined) =>
  ({ is: 'there', sizes: lattice === undefined ? undefined : ({ lattice } as InferredWireSizes) }) as const;

describe('the wires that a plan chooses from', () => {
  it('are those asked for, else those of the old wire, else those of the rules', () => {
    const rules = { wires: 'metric' } as const;
    expect(wiresToUse('metric', sizes('US'), rules)).toBe('metric');
    expect(wiresToUse(undefined, sizes('US'), rules)).toBe('US');
    expect(wiresToUse(undefined, sizes(undefined), rules)).toBe('metric');
    expect(wiresToUse(undefined, { is: 'on the way' }, rules)).toBe('metric');
  });

  it('are on the shelf where some of the wire is free: not counted is not there', () => {
    const wire = (diameter_m: number, free: number | undefined) =>
      ({ item: { kind: 'wire', diameter_m }, free }) as const;
    const felt = { item: { kind: 'other', name: 'Red felt', unit: 'mm' }, free: 400 } as const;
    expect(
      wiresOnShelf([wire(0.001, 120), wire(0.00105, 0), felt, wire(0.0011, undefined), wire(0.00115, -3)]),
    ).toEqual([0.001]);
  });
});
