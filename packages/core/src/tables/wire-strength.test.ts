import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  inches,
  inInches,
  inKsi,
  inMegapascals,
  ksi,
  megapascals,
  millimetres,
  newtons,
  pascals,
} from '../units/index.ts';
import {
  A228_MAXIMUM,
  A228_MINIMUM,
  CAREFUL_MUSIC_WIRE_LAW,
  EN_10270_SH_MINIMUM,
  EN_10270_SM_MINIMUM,
  interpolatedStrengthTable,
  PUBLISHED_STRENGTH_TABLES,
  REAL_WIRE_REMARK,
  rangeOfTable,
  SHIGLEY_A228_LAW,
  strengthTableNamed,
  testedStrengthTable,
} from './index.ts';
import { expectPublished, inputOf, publishedChecks } from './testing/published-checks.ts';

const everyTable = [
  A228_MINIMUM,
  A228_MAXIMUM,
  SHIGLEY_A228_LAW,
  CAREFUL_MUSIC_WIRE_LAW,
  EN_10270_SM_MINIMUM,
  EN_10270_SH_MINIMUM,
];

describe('published wire strengths', () => {
  it.each(publishedChecks(/^a228-min-/))('$id ($source)', (check) => {
    expectPublished(check, inKsi(A228_MINIMUM.strengthAt(inches(inputOf(check, 'diameter_in'))).strength));
  });

  it.each(publishedChecks(/^a228-max-/))('$id ($source)', (check) => {
    expectPublished(check, inKsi(A228_MAXIMUM.strengthAt(inches(inputOf(check, 'diameter_in'))).strength));
  });

  it.each(publishedChecks(/^en10270-sm-/))('$id ($source)', (check) => {
    const diameter = millimetres(inputOf(check, 'diameter_mm'));
    expectPublished(check, inMegapascals(EN_10270_SM_MINIMUM.strengthAt(diameter).strength));
  });

  it.each(publishedChecks(/^en10270-sh-/))('$id ($source, from memory)', (check) => {
    const diameter = millimetres(inputOf(check, 'diameter_mm'));
    expectPublished(check, inMegapascals(EN_10270_SH_MINIMUM.strengthAt(diameter).strength));
  });

  it('shigley-a228-0.040 (Shigley, table of spring-wire constants; from memory)', () => {
    const [check] = publishedChecks(/^shigley-a228-0.040$/);
    const { strength } = SHIGLEY_A228_LAW.strengthAt(inches(inputOf(check!, 'diameter_in')));
    expectPublished(check!, inKsi(strength));
  });

  it('shigley-a228-1.000mm (Shigley, table of spring-wire constants; from memory)', () => {
    const [check] = publishedChecks(/^shigley-a228-1.000mm$/);
    const { strength } = SHIGLEY_A228_LAW.strengthAt(millimetres(inputOf(check!, 'diameter_mm')));
    expectPublished(check!, inMegapascals(strength));
  });

  it('fe-handbook-7.25mm (worked problem 141, engineeringprep.com)', () => {
    const [check] = publishedChecks(/^fe-handbook-/);
    const { strength } = CAREFUL_MUSIC_WIRE_LAW.strengthAt(millimetres(inputOf(check!, 'diameter_mm')));
    expectPublished(check!, inMegapascals(strength));
  });

  it('EN 10270-1 SM agrees with the rounded table of a spring maker from 0.3 to 2.0 mm within 10 MPa (mollificiomodenese.it)', () => {
    const printed: readonly (readonly [number, number])[] = [
      [0.3, 2370],
      [0.4, 2270],
      [0.5, 2200],
      [0.6, 2140],
      [1.7, 1810],
      [1.8, 1790],
      [1.9, 1770],
      [2.0, 1760],
    ];
    for (const [diameter, minimum] of printed) {
      const { strength } = EN_10270_SM_MINIMUM.strengthAt(millimetres(diameter));
      expect(Math.abs(inMegapascals(strength) - minimum)).toBeLessThanOrEqual(10);
    }
  });

  it('EN 10270-1 SH agrees with the rounded table of a wire maker at 0.30 and 0.32 mm within 15 MPa (hengmingsteelwire.com)', () => {
    for (const [diameter, minimum] of [
      [0.3, 2660],
      [0.32, 2640],
    ] as const) {
      const { strength } = EN_10270_SH_MINIMUM.strengthAt(millimetres(diameter));
      expect(Math.abs(inMegapascals(strength) - minimum)).toBeLessThanOrEqual(15);
    }
  });
});

describe('strengthAt()', () => {
  it('never rises with the diameter, in any table', () => {
    for (const table of everyTable) {
      fc.assert(
        fc.property(
          fc.double({ min: 0.3, max: 2, noNaN: true }),
          fc.double({ min: 1e-3, max: 0.5, noNaN: true }),
          (thin, more) =>
            table.strengthAt(millimetres(thin)).strength >=
            table.strengthAt(millimetres(thin + more)).strength,
        ),
        { seed: 7 },
      );
    }
  });

  it('of the A228 minimum lies below the maximum everywhere in the table', () => {
    for (let mils = 28; mils <= 80; mils += 0.25) {
      const diameter = inches(mils / 1000);
      expect(A228_MINIMUM.strengthAt(diameter).strength).toBeLessThan(
        A228_MAXIMUM.strengthAt(diameter).strength,
      );
    }
  });

  it('reads half way between two rows where the diameter is their geometric mean', () => {
    const diameter = inches(Math.sqrt(0.04 * 0.042));
    expect(inKsi(A228_MINIMUM.strengthAt(diameter).strength)).toBeCloseTo(314, 9);
  });

  it('differs from reading straight in d by less than 0.5 MPa', () => {
    const rows = publishedChecks(/^a228-min-/).map(
      (check) => [inputOf(check, 'diameter_in'), check.expected] as const,
    );
    let most = 0;
    for (let index = 1; index < rows.length; index += 1) {
      const [from, to] = [rows[index - 1]!, rows[index]!];
      for (let share = 0; share <= 1; share += 0.05) {
        const straight = inMegapascals(ksi(from[1] + (to[1] - from[1]) * share));
        const diameter = inches(from[0] + (to[0] - from[0]) * share);
        most = Math.max(most, Math.abs(straight - inMegapascals(A228_MINIMUM.strengthAt(diameter).strength)));
      }
    }
    expect(most).toBeGreaterThan(0.1);
    expect(most).toBeLessThan(0.5);
  });

  it('flags a diameter outside the table and still answers by the nearest interval', () => {
    const outside = A228_MINIMUM.strengthAt(inches(0.026));
    expect(outside.isWithinRange).toBe(false);
    expect(inKsi(outside.strength)).toBeGreaterThan(333);
    expect(A228_MINIMUM.strengthAt(inches(0.09)).isWithinRange).toBe(false);
    expect(EN_10270_SM_MINIMUM.strengthAt(millimetres(2.1)).isWithinRange).toBe(false);
  });

  it('counts both ends of the table as inside, also after a round trip through inches', () => {
    for (const table of everyTable) {
      for (const end of [table.smallestDiameter, table.largestDiameter]) {
        expect(table.strengthAt(inches(inInches(end))).isWithinRange).toBe(true);
      }
    }
  });

  it('lets the handbook law lie above the A228 table, by at most 2 %, from .030 to .048 in', () => {
    const excess = publishedChecks(/^a228-min-0.0(3|40|42|45|48)/).map((check) => {
      const diameter = inches(inputOf(check, 'diameter_in'));
      return SHIGLEY_A228_LAW.strengthAt(diameter).strength / A228_MINIMUM.strengthAt(diameter).strength - 1;
    });
    expect(Math.min(...excess)).toBeGreaterThan(0);
    expect(Math.max(...excess)).toBeLessThan(0.02);
  });

  it('refuses a diameter that is not positive', () => {
    for (const wrong of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => A228_MINIMUM.strengthAt(millimetres(wrong))).toThrow(RangeError);
      expect(() => SHIGLEY_A228_LAW.strengthAt(millimetres(wrong))).toThrow(RangeError);
    }
  });
});

describe('a strength table', () => {
  it('names itself, its source and its range', () => {
    for (const table of everyTable) {
      expect(table.name).not.toBe('');
      expect(table.source).not.toBe('');
    }
    expect(rangeOfTable(A228_MINIMUM)).toBe('0.711 to 2.032 mm');
  });

  it('carries the remark about real wire wherever it is a minimum or a law', () => {
    for (const table of everyTable.filter(({ kind }) => kind !== 'maximum')) {
      expect(table.remark).toBe(REAL_WIRE_REMARK);
    }
  });
});

describe('testedStrengthTable()', () => {
  const own = {
    name: 'own wire',
    source: 'ten pieces of each pulled in the shop',
    wires: [
      { diameter: millimetres(1), breakLoad: newtons(1900), standardUncertainty: newtons(19) },
      { diameter: millimetres(0.8), breakLoad: newtons(1250) },
    ],
  };

  it('gives back the break load of each wire that was pulled', () => {
    const table = testedStrengthTable(own);
    for (const wire of own.wires) {
      const { strength, isWithinRange } = table.strengthAt(wire.diameter);
      expect(((strength * Math.PI) / 4) * wire.diameter ** 2).toBeCloseTo(wire.breakLoad, 9);
      expect(isWithinRange).toBe(true);
    }
    expect(table.kind).toBe('tested');
    expect(table.remark).toBe('');
  });

  it('carries the scatter of the tests, 2 % where none was noted', () => {
    const table = testedStrengthTable(own);
    const relative = (diameter: number): number => {
      const { strength, standardUncertainty } = table.strengthAt(millimetres(diameter));
      return standardUncertainty / strength;
    };
    expect(relative(1)).toBeCloseTo(0.01, 12);
    expect(relative(0.8)).toBeCloseTo(0.02, 12);
  });

  it('asks for a source', () => {
    expect(() => testedStrengthTable({ ...own, source: ' ' })).toThrow(
      "Cannot make the strength table 'own wire' as tested values need a source (who pulled them, or whose sheet): found none",
    );
  });

  it('refuses one diameter alone, the same diameter twice and a load of zero', () => {
    expect(() => testedStrengthTable({ ...own, wires: own.wires.slice(0, 1) })).toThrow(
      /at least two diameters/,
    );
    expect(() => testedStrengthTable({ ...own, wires: [own.wires[0]!, own.wires[0]!] })).toThrow(
      /stands twice/,
    );
    expect(() =>
      testedStrengthTable({
        ...own,
        wires: [own.wires[0]!, { diameter: millimetres(2), breakLoad: newtons(0) }],
      }),
    ).toThrow(/break load must be > 0/);
  });
});

describe('strengthTableNamed()', () => {
  it('finds every published table by its own name, and no two share one', () => {
    for (const table of PUBLISHED_STRENGTH_TABLES) expect(strengthTableNamed(table.name)).toBe(table);
    expect(new Set(PUBLISHED_STRENGTH_TABLES.map(({ name }) => name)).size).toBe(
      PUBLISHED_STRENGTH_TABLES.length,
    );
  });

  it("looks among the shop's own tables first", () => {
    const own = {
      name: 'ASTM A228 minimum',
      source: 'pulled here',
      wires: [
        { diameter: millimetres(0.8), breakLoad: newtons(1250) },
        { diameter: millimetres(1), breakLoad: newtons(1900) },
      ],
    };
    expect(strengthTableNamed(own.name, [own]).kind).toBe('tested');
  });

  it('lists the names there are when it finds none', () => {
    expect(() => strengthTableNamed('A 228')).toThrow(/'ASTM A228 minimum', .*: found 'A 228'/);
  });
});

describe('interpolatedStrengthTable()', () => {
  it('takes its rows in any order', () => {
    const point = (d: number, s: number) => ({
      diameter: millimetres(d),
      strength: megapascals(s),
      standardUncertainty: pascals(0),
    });
    const rows = [point(2, 1800), point(0.5, 2500), point(1, 2200)];
    const input = { name: 'x', kind: 'tested', source: 'x', remark: '' } as const;
    const forward = interpolatedStrengthTable({ ...input, points: rows });
    const backward = interpolatedStrengthTable({ ...input, points: [...rows].reverse() });
    for (const d of [0.5, 0.7, 1, 1.3, 2]) {
      expect(forward.strengthAt(millimetres(d))).toEqual(backward.strengthAt(millimetres(d)));
    }
    expect(inMegapascals(forward.strengthAt(millimetres(1)).strength)).toBeCloseTo(2200, 9);
  });
});
