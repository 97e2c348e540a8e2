import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inharmonicity, type PlainString, stringTension, type WoundString } from '../strings/index.ts';
import { A228_MINIMUM, musicWireModulus, SHIGLEY_A228_LAW } from '../tables/index.ts';
import { hertz, metres, millimetres } from '../units/index.ts';
import { analyseNote, analyseScale, reanalyseNote, type ScaleNote } from './index.ts';
import { changed, inventedGrand } from './testing/invented-grand.ts';

const quick = { uncertainties: 'left out', woundStrings: 'core formula' } as const;
const grand = inventedGrand();
const a4: ScaleNote = grand[48]!;

describe('analyseNote()', () => {
  it('says what the handbook pages say of a plain string', () => {
    const analysis = analyseNote(a4, quick);
    const string = a4.string as PlainString;
    const tension = stringTension({ ...string, frequency: a4.frequency });
    expect(analysis.tension).toBe(tension);
    expect(analysis.inharmonicity).toBe(inharmonicity({ ...string, tension }));
    expect(analysis.unisonTension).toBeCloseTo(3 * tension, 9);
    expect(analysis.breakShare).toBeCloseTo(tension / analysis.breakLoad, 12);
    expect(analysis.impedance).toBeCloseTo(Math.sqrt(tension * analysis.linearDensity), 12);
  });

  it('names the strength table and carries its remark', () => {
    expect(analyseNote(a4, quick)).toMatchObject({
      strengthTable: A228_MINIMUM.name,
      strengthRemark: A228_MINIMUM.remark,
      isWithinStrengthTable: true,
    });
    const byLaw = analyseNote(a4, { ...quick, strengthTable: SHIGLEY_A228_LAW });
    expect(byLaw.strengthTable).toBe(SHIGLEY_A228_LAW.name);
    expect(byLaw.breakShare).toBeLessThan(analyseNote(a4, quick).breakShare);
  });

  it('says by which method B was worked out', () => {
    expect(analyseNote(a4).inharmonicityMethod).toBe('core formula');
    expect(analyseNote(grand[0]!).inharmonicityMethod).toBe('exact modes, fitted over partials 1-8');
    expect(analyseNote(grand[0]!, quick).inharmonicityMethod).toBe('core formula');
  });

  it('finds B of a wound string with bare ends well above the core formula, and equal to it without winding', () => {
    const wound = grand[0]!;
    const exact = analyseNote(wound).inharmonicity / analyseNote(wound, quick).inharmonicity;
    expect(exact).toBeGreaterThan(1.04);
    expect(exact).toBeLessThan(4.5);
    const bare: ScaleNote = { ...wound, string: { ...(wound.string as WoundString), layers: [] } };
    const ratio = analyseNote(bare).inharmonicity / analyseNote(bare, quick).inharmonicity;
    expect(ratio).toBeCloseTo(1, 6);
  });

  it('finds the exact tension of a wound string a little above the closed form', () => {
    for (const note of grand.slice(0, 20)) {
      const ratio = analyseNote(note).tension / analyseNote(note, quick).tension;
      expect(ratio).toBeGreaterThanOrEqual(1 - 1e-12);
      expect(ratio).toBeLessThan(1.002);
    }
  });

  it('is the plain string where a wound one has no winding (law)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.7, max: 1.6, noNaN: true }),
        fc.double({ min: 0.3, max: 2, noNaN: true }),
        fc.double({ min: 27, max: 500, noNaN: true }),
        (d, length, f) => {
          const shared = { speakingLength: metres(length) };
          const place = { key: 30, section: 's', bridge: 'b', strings: 2, frequency: hertz(f) } as const;
          const plain = analyseNote(
            { ...place, string: { kind: 'plain', diameter: millimetres(d), ...shared } },
            quick,
          );
          const wound = analyseNote(
            { ...place, string: { kind: 'wound', coreDiameter: millimetres(d), layers: [], ...shared } },
            quick,
          );
          for (const name of ['tension', 'breakShare', 'inharmonicity', 'stress', 'impedance'] as const) {
            expect(wound[name] / plain[name]).toBeCloseTo(1, 10);
          }
        },
      ),
      { seed: 5 },
    );
  });

  it('takes the modulus of a string before the one by diameter, and that before the default', () => {
    const ofString = analyseNote(
      { ...a4, string: { ...(a4.string as PlainString), youngsModulus: musicWireModulus(millimetres(0.5)) } },
      { ...quick, youngsModulusAt: musicWireModulus },
    );
    const byDiameter = analyseNote(a4, { ...quick, youngsModulusAt: musicWireModulus });
    const byDefault = analyseNote(a4, quick);
    expect(byDiameter.inharmonicity / byDefault.inharmonicity).toBeCloseTo(200 / 202, 9);
    expect(ofString.inharmonicity / byDefault.inharmonicity).toBeCloseTo(203.4 / 202, 9);
  });

  it('adds up a unison whose strings were read one by one', () => {
    const string = a4.string as PlainString;
    const thicker: PlainString = { ...string, diameter: metres(string.diameter * 1.1) };
    const analysis = analyseNote({ ...a4, individualStrings: [string, thicker, string] }, quick);
    expect(analysis.stringTensions).toHaveLength(3);
    expect(analysis.unisonTension / analysis.tension).toBeCloseTo(2 + 1.21, 10);
    expect(() => analyseNote({ ...a4, individualStrings: [string] }, quick)).toThrow(
      'Cannot analyse note 49 as its unison of 3 needs as many strings read one by one: found 1',
    );
  });

  it('refuses a length of zero', () => {
    const string = { ...(a4.string as PlainString), speakingLength: metres(0) };
    expect(() => analyseNote({ ...a4, string })).toThrow(
      'Cannot compute tension as speaking length must be > 0',
    );
  });
});

describe('analyseScale()', () => {
  const analysis = analyseScale(grand, quick);

  it('puts the notes in the order of the keys, whatever order they come in', () => {
    expect(analyseScale([...grand].reverse(), quick)).toEqual(analysis);
    expect(analysis.notes.map((note) => note.key)).toEqual(grand.map((note) => note.key));
  });

  it('gives sections and bridges loads and strings that add up to the whole', () => {
    for (const shares of [analysis.sections, analysis.bridges]) {
      expect(shares.reduce((sum, share) => sum + share.load, 0)).toBeCloseTo(analysis.total, 6);
      expect(shares.reduce((sum, share) => sum + share.strings, 0)).toBe(analysis.totalStrings);
      expect(shares.reduce((sum, share) => sum + share.notes, 0)).toBe(88);
    }
    expect(analysis.sections.map((section) => section.name)).toEqual([
      'bass',
      'tenor',
      'low treble',
      'high treble',
    ]);
  });

  it('of a large grand comes near the load that is told of grands, 160 to 200 kN (common practice, no source)', () => {
    expect(analysis.total).toBeGreaterThan(160e3);
    expect(analysis.total).toBeLessThan(200e3);
  });

  it('of no notes is empty and pulls nothing', () => {
    expect(analyseScale([])).toMatchObject({
      notes: [],
      sections: [],
      bridges: [],
      total: 0,
      totalStrings: 0,
    });
  });

  it('refuses a key that occurs twice', () => {
    expect(() => analyseScale([a4, a4], quick)).toThrow(
      'each key may occur once: key 49 occurs more than once',
    );
  });
});

describe('reanalyseNote()', () => {
  it('equals a fresh analysis of the edited scale', () => {
    const analysis = analyseScale(grand, quick);
    for (const key of [1, 21, 49, 88]) {
      const edited = changed(grand, (note) =>
        note.key === key ? { frequency: hertz(note.frequency * 1.01), section: 'elsewhere' } : undefined,
      );
      expect(reanalyseNote(analysis, edited[key - 1]!, quick)).toEqual(analyseScale(edited, quick));
    }
  });

  it('adds a note that was missing', () => {
    const without = analyseScale(grand.slice(0, 87), quick);
    expect(reanalyseNote(without, grand[87]!, quick)).toEqual(analyseScale(grand, quick));
  });
});
