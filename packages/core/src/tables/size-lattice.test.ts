import { describe, expect, it } from 'vitest';
import { inInches, inMillimetres, inMils, millimetres, mils } from '../units/index.ts';
import {
  diametersOfSize,
  disputesOf,
  latticeDiameters,
  METRIC_WIRE_SIZES,
  nearestSize,
  sizeLabel,
  US_WIRE_SIZES,
} from './index.ts';
import { expectPublished, inputOf, publishedChecks } from './testing/published-checks.ts';

describe('published size numbers', () => {
  it.each(publishedChecks(/^size-us-/))('$id ($source)', (check) => {
    const sizes = diametersOfSize(US_WIRE_SIZES, inputOf(check, 'size_number'));
    expect(sizes).toHaveLength(1);
    expectPublished(check, inInches(sizes[0]!.diameter));
  });

  it.each(publishedChecks(/^size-metric-/))('$id ($source)', (check) => {
    const sizes = diametersOfSize(METRIC_WIRE_SIZES, inputOf(check, 'size_number'));
    expect(sizes).toHaveLength(1);
    expectPublished(check, inMillimetres(sizes[0]!.diameter));
  });

  it.each(publishedChecks(/^size-mwg-/))('$id is one of two claims ($source)', (check) => {
    const sizes = diametersOfSize(US_WIRE_SIZES, inputOf(check, 'size_number'));
    expect(sizes.length).toBe(2);
    expect(sizes.every((size) => size.isDisputed)).toBe(true);
    expectPublished(
      check,
      inInches(sizes.find((size) => size.source.startsWith('music wire gauge'))!.diameter),
    );
  });

  it('size-rule-14 (pianotech list, 15 and 16 November 2004): (mils − 5) / 2', () => {
    const [check] = publishedChecks(/^size-rule-/);
    const { sizes } = nearestSize(US_WIRE_SIZES, mils(inputOf(check!, 'diameter_mil')));
    expectPublished(check!, sizes[0]!.sizeNumber);
  });
});

describe('a size lattice', () => {
  it('runs from thin to thick', () => {
    for (const lattice of [US_WIRE_SIZES, METRIC_WIRE_SIZES]) {
      const diameters = latticeDiameters(lattice);
      expect(diameters).toEqual([...diameters].sort((a, b) => a - b));
      expect(new Set(diameters).size).toBe(diameters.length);
    }
  });

  it('shows the conflicts above 23 and asks for the micrometer', () => {
    expect(disputesOf(US_WIRE_SIZES).map((sentence) => sentence.slice(0, 7))).toEqual([
      'Size 24',
      'Size 25',
      'Size 26',
    ]);
    expect(disputesOf(US_WIRE_SIZES)[0]).toContain('1.346 mm');
    expect(disputesOf(US_WIRE_SIZES)[0]).toContain('1.397 mm');
    expect(disputesOf(METRIC_WIRE_SIZES)).toEqual([]);
    expect(nearestSize(US_WIRE_SIZES, mils(55)).sizes.map((size) => size.label)).toEqual(['24', '25']);
  });

  it('has a different 14 in each numbering, 3 % apart in tension', () => {
    const us = diametersOfSize(US_WIRE_SIZES, 14)[0]!.diameter;
    const metric = diametersOfSize(METRIC_WIRE_SIZES, 14)[0]!.diameter;
    expect((us / metric) ** 2 - 1).toBeCloseTo(0.032, 3);
  });
});

describe('nearestSize()', () => {
  it('gives back every diameter of its own lattice', () => {
    for (const lattice of [US_WIRE_SIZES, METRIC_WIRE_SIZES]) {
      for (const size of lattice.sizes) {
        const nearest = nearestSize(lattice, size.diameter);
        expect(nearest.difference).toBe(0);
        expect(nearest.sizes).toContainEqual(size);
      }
    }
  });

  it('says how far off the wire is, with its sign', () => {
    const nearest = nearestSize(US_WIRE_SIZES, mils(32.8));
    expect(nearest.sizes[0]!.label).toBe('14');
    expect(inMils(nearest.difference)).toBeCloseTo(-0.2, 9);
  });

  it('says when a wire lies beyond the lattice', () => {
    expect(nearestSize(METRIC_WIRE_SIZES, millimetres(0.72)).isWithinLattice).toBe(true);
    expect(nearestSize(METRIC_WIRE_SIZES, millimetres(0.6)).isWithinLattice).toBe(false);
    expect(nearestSize(METRIC_WIRE_SIZES, millimetres(2)).isWithinLattice).toBe(false);
    expect(() => nearestSize(METRIC_WIRE_SIZES, millimetres(0))).toThrow(RangeError);
  });
});

describe('sizeLabel()', () => {
  it('writes halves as a fraction', () => {
    expect([12, 12.5, 20].map(sizeLabel)).toEqual(['12', '12½', '20']);
  });
});
