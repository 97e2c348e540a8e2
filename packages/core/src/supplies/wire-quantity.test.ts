import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  inches,
  inKilograms,
  kilograms,
  kilogramsPerCubicMetre,
  type Metres,
  metres,
  millimetres,
} from '../units/index.ts';
import { coilsToBuy } from './coils.ts';
import { packsToBuy, pinsNeeded, STARTING_PIN_ALLOWANCE } from './pin-count.ts';
import { STARTING_WIRE_ALLOWANCE, wireLength, wireMass, wireNeed } from './wire-quantity.ts';

const KILOGRAMS_PER_POUND = 0.45359237;

describe('wireMass()', () => {
  it('weighs 100 m of 1 mm as the arithmetic written out', () => {
    // π/4 · (0.001 m)² = 7.853982e-7 m²; · 7850 kg/m³ = 6.165376e-3 kg/m; · 100 m = 0.6165376 kg.
    expect(inKilograms(wireMass({ diameter: millimetres(1), length: metres(100) }))).toBeCloseTo(
      0.6165376,
      6,
    );
  });

  it('agrees with a weight per foot from a density in pounds', () => {
    // A228 at 490 lb/ft³ (makeitfrom.com, ASTM A228 music wire): 1000 ft of .041 in weigh
    // 490 · π/4 · (0.041/12)² · 1000 = 4.4925 lb. 490 lb/ft³ is 7849 kg/m³.
    const length = inches(12_000);
    const mass = wireMass({ diameter: inches(0.041), length });
    expect(inKilograms(mass) / KILOGRAMS_PER_POUND).toBeCloseTo(4.4925, 2);
    const byTheirs = wireMass({
      diameter: inches(0.041),
      length,
      density: kilogramsPerCubicMetre((490 * KILOGRAMS_PER_POUND) / 0.3048 ** 3),
    });
    expect(inKilograms(byTheirs) / KILOGRAMS_PER_POUND).toBeCloseTo(4.4925, 4);
  });

  it('is turned round by wireLength(), and quadruples when the diameter doubles', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.0005, max: 0.002, noNaN: true }),
        fc.double({ min: 0, max: 1000, noNaN: true }),
        (diameter, length) => {
          const mass = wireMass({ diameter: metres(diameter), length: metres(length) });
          expect(wireLength({ diameter: metres(diameter), mass })).toBeCloseTo(length, 8);
          const thick = wireMass({ diameter: metres(2 * diameter), length: metres(length) });
          expect(thick).toBeCloseTo(4 * mass, 8);
        },
      ),
    );
  });
});

describe('wireNeed()', () => {
  it('adds cuts, spoilage and a spare of the longest, by hand', () => {
    // Cuts 1.9 + 1.7 + 1.4 = 5.0 m; a tenth of it 0.5 m; one spare of 1.9 m; 7.4 m in all.
    const cuts = [1.9, 1.7, 1.4].map(metres);
    const need = wireNeed({ diameter: millimetres(1), cuts, allowance: STARTING_WIRE_ALLOWANCE });
    expect(need.cut).toBeCloseTo(5, 12);
    expect(need.spoilage).toBeCloseTo(0.5, 12);
    expect(need.spare).toBeCloseTo(1.9, 12);
    expect(need.total).toBeCloseTo(7.4, 12);
    // 7.4 m · 6.165376 g/m = 45.62 g
    expect(inKilograms(need.mass)).toBeCloseTo(0.04562, 5);
  });

  it('asks for nothing where nothing is cut', () => {
    const need = wireNeed({ diameter: millimetres(1), cuts: [], allowance: STARTING_WIRE_ALLOWANCE });
    expect(need).toMatchObject({ wires: 0, total: 0, mass: 0 });
  });

  it('refuses a cut that is not a length', () => {
    expect(() =>
      wireNeed({ diameter: millimetres(1), cuts: [metres(Number.NaN)], allowance: STARTING_WIRE_ALLOWANCE }),
    ).toThrow('a cut length must be > 0');
  });
});

describe('coilsToBuy()', () => {
  const diameter = millimetres(1);

  it('never joins wire: three wires of 3 m need three pieces of 5 m, although 9 m come out of two', () => {
    const three = [3, 3, 3].map(metres);
    const plan = coilsToBuy({ diameter, cuts: three, sold: { by: 'piece', length: metres(5) } });
    expect(plan).toMatchObject({ count: 3, least: 2 });
    expect(plan.left).toBeCloseTo(6, 12);
  });

  it('takes a coil of half a kilogram of 1 mm as 81.1 m', () => {
    const sold = { by: 'coil mass', mass: kilograms(0.5) } as const;
    const cuts = Array.from({ length: 40 }, () => metres(2));
    const plan = coilsToBuy({ diameter, cuts, sold });
    // 0.5 kg / 6.165376 g/m = 81.098 m: forty wires of 2 m, and 1.098 m left.
    expect(plan.lengthOfOne).toBeCloseTo(81.098, 3);
    expect(plan.count).toBe(1);
    expect(plan.left).toBeCloseTo(1.098, 3);
    // Spoilage of 8 m does not fit into what is left.
    expect(coilsToBuy({ diameter, cuts, sold, beyond: metres(8) }).count).toBe(2);
  });

  it('is as good as trying every order, to one piece, on small random lists', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 10 }), { minLength: 1, maxLength: 7 }), (lengths) => {
        const { count, least } = coilsToBuy({
          diameter,
          cuts: lengths.map(metres),
          sold: { by: 'piece', length: metres(10) },
        });
        const fewest = fewestPieces(lengths, 10);
        expect(least).toBeLessThanOrEqual(fewest);
        expect(count).toBeGreaterThanOrEqual(fewest);
        expect(count).toBeLessThanOrEqual(Math.floor((11 / 9) * fewest + 6 / 9));
      }),
    );
  });

  it('says when a wire does not come out of one piece', () => {
    const cuts: Metres[] = [metres(2.5)];
    expect(() => coilsToBuy({ diameter, cuts, sold: { by: 'piece', length: metres(2) } })).toThrow(
      'Choose a longer coil or piece',
    );
  });
});

/** The fewest pieces by trying every place for every cut. */
function fewestPieces(cuts: readonly number[], length: number, rooms: readonly number[] = []): number {
  const [cut, ...rest] = cuts;
  if (cut === undefined) return rooms.length;
  let best = fewestPieces(rest, length, [...rooms, length - cut]);
  rooms.forEach((room, index) => {
    if (room >= cut) best = Math.min(best, fewestPieces(rest, length, rooms.with(index, room - cut)));
  });
  return best;
}

describe('pinsNeeded() and packsToBuy()', () => {
  it('counts by hand', () => {
    // 150 pins: 2 % are 3 spares; 10 pins: 0.2, so the least of 2.
    expect(pinsNeeded({ needed: 150, allowance: STARTING_PIN_ALLOWANCE })).toEqual({
      needed: 150,
      spares: 3,
      test: 0,
      total: 153,
    });
    expect(pinsNeeded({ needed: 10, test: 2, allowance: STARTING_PIN_ALLOWANCE }).total).toBe(14);
    expect(pinsNeeded({ needed: 0, allowance: STARTING_PIN_ALLOWANCE }).total).toBe(0);
    expect(packsToBuy(153, 50)).toEqual({ packs: 4, pieces: 200, left: 47 });
    expect(packsToBuy(150, 50)).toEqual({ packs: 3, pieces: 150, left: 0 });
  });

  it('never buys too little, nor a whole pack too much', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 1, max: 500 }), (wanted, size) => {
        const { pieces, left } = packsToBuy(wanted, size);
        expect(pieces).toBeGreaterThanOrEqual(wanted);
        expect(left).toBeLessThan(size);
      }),
    );
  });
});
