import { describe, expect, it } from 'vitest';
import type { PlainString, WoundString } from '../strings/index.ts';
import { COPPER_DENSITY, STEEL_DENSITY, STEEL_YOUNGS_MODULUS } from '../tables/index.ts';
import {
  degrees,
  hertz,
  kilogramsPerCubicMetre,
  metres,
  millimetres,
  pascals,
  propagate,
  radians,
} from '../units/index.ts';
import {
  type AnalysisOptions,
  analyseNote,
  analyseScale,
  COMMON_UNCERTAINTIES,
  type NoteFigureName,
  noteFigureNames,
  type ScaleNote,
} from './index.ts';
import { noteFromInputs, noteInputs } from './note-inputs.ts';
import { inventedGrand } from './testing/invented-grand.ts';
import { meanAndDeviation, seededNormals } from './testing/seeded-normals.ts';

/*
 * First-order propagation against Monte Carlo (JCGM 101:2008): the strings are drawn here from their uncertainties without
 * the code that propagates them.
 */

const assumed = COMMON_UNCERTAINTIES;

/** What is the same for every note of one drawn piano. */
interface DrawnPiano {
  readonly pitch: number;
  readonly steel: number;
  readonly winding: number;
  readonly modulus: number;
}

function drawPiano(normal: () => number): DrawnPiano {
  return {
    pitch: 2 ** ((assumed.frequency_cents * normal()) / 1200),
    steel: STEEL_DENSITY * (1 + assumed.steelDensity * normal()),
    winding: COPPER_DENSITY * (1 + assumed.windingDensity * normal()),
    modulus: STEEL_YOUNGS_MODULUS * (1 + assumed.youngsModulus * normal()),
  };
}

function drawNote(note: ScaleNote, piano: DrawnPiano, normal: () => number): ScaleNote {
  const off = (value: number, uncertainty: number) => metres(value + uncertainty * normal());
  const { string } = note;
  const speakingLength = off(string.speakingLength, assumed.speakingLength_m);
  const material = {
    steelDensity: kilogramsPerCubicMetre(piano.steel),
    youngsModulus: pascals(piano.modulus),
  };
  let drawn: PlainString | WoundString;
  if (string.kind === 'plain') {
    drawn = {
      kind: 'plain',
      speakingLength,
      diameter: off(string.diameter, assumed.wireDiameter_m),
      ...material,
    };
  } else {
    const coreDiameter = off(string.coreDiameter, assumed.wireDiameter_m);
    let trueUnder: number = string.coreDiameter;
    let readUnder: number = coreDiameter;
    const layers = string.layers.map((layer) => {
      trueUnder += 2 * layer.wireDiameter;
      const readOver = off(trueUnder, assumed.diameterOver_m);
      const wireDiameter = metres((readOver - readUnder) / 2);
      readUnder = readOver;
      return {
        wireDiameter,
        bareFront: off(layer.bareFront, assumed.bareEnd_m),
        bareBack: off(layer.bareBack, assumed.bareEnd_m),
      };
    });
    drawn = {
      kind: 'wound',
      speakingLength,
      coreDiameter,
      layers,
      windingDensity: kilogramsPerCubicMetre(piano.winding),
      ...material,
    };
  }
  return { ...note, string: drawn, frequency: hertz(note.frequency * piano.pitch) };
}

/** Strength is known to the rounding of its table, as good as exact here; it is drawn in a test of its own below. */
function compareWithMonteCarlo(note: ScaleNote, options: AnalysisOptions, draws: number, seed: number): void {
  const analysis = analyseNote(note, options);
  const normal = seededNormals(seed);
  const samples = {} as Record<NoteFigureName, number[]>;
  for (const name of noteFigureNames) samples[name] = [];
  for (let draw = 0; draw < draws; draw += 1) {
    const expansion = 1 + assumed.expansion * normal();
    const drawn = analyseNote(drawNote(note, drawPiano(normal), normal), {
      ...options,
      uncertainties: 'left out',
    });
    // The expansion is not part of a string: the pitch change is proportional to it.
    for (const name of noteFigureNames) {
      samples[name].push(drawn[name] * (name === 'pitchPerKelvin' ? expansion : 1));
    }
  }
  // Four standard errors of a standard deviation, and 1 % for what first order leaves out.
  const tolerance = 4 / Math.sqrt(2 * draws) + 0.01;
  for (const name of noteFigureNames) {
    const { deviation } = meanAndDeviation(samples[name]);
    const uncertainty = analysis.standardUncertainties![name];
    const ratio = uncertainty / deviation;
    expect(Math.abs(ratio - 1), `${name} of note ${note.key}: ratio ${ratio}`).toBeLessThan(tolerance);
  }
}

const grand = inventedGrand();
const noteOf = (key: number): ScaleNote => grand[key - 1]!;

/** A table whose figure is exact, so that the rounding of the real one does not enter the comparison. */
const exactStrength = {
  name: 'exact',
  kind: 'law',
  source: 'test',
  remark: '',
  smallestDiameter: millimetres(0.1),
  largestDiameter: millimetres(9),
  strengthAt: (diameter: number) => ({
    strength: pascals(2.2e9 * (diameter * 1000) ** -0.15),
    standardUncertainty: pascals(0),
    isWithinRange: true,
  }),
} as const;

describe('standard uncertainties of a note', () => {
  it.each([21, 49, 88])('agree with Monte Carlo for plain note %i', (key) => {
    compareWithMonteCarlo(noteOf(key), { strengthTable: exactStrength }, 8000, key);
  });

  it.each([1, 8, 20])('agree with Monte Carlo for wound note %i by the closed form', (key) => {
    const options = { strengthTable: exactStrength, woundStrings: 'core formula' } as const;
    compareWithMonteCarlo(noteOf(key), options, 4000, key);
  });

  it.each([1, 20])('agree with Monte Carlo for wound note %i by its exact modes', (key) => {
    compareWithMonteCarlo(noteOf(key), { strengthTable: exactStrength }, 800, key);
  });

  it.each([1, 8, 14, 20])(
    'of B of wound note %i are within a few per cent of what varying every input exactly gives',
    (key) => {
      const note = noteOf(key);
      const inputs = noteInputs(note, assumed, STEEL_YOUNGS_MODULUS, 0);
      const { b } = propagate(
        (of) => ({
          b: analyseNote({ ...note, ...noteFromInputs(note.string, of) }, { uncertainties: 'left out' })
            .inharmonicity,
        }),
        inputs,
      );
      const ratio = analyseNote(note).standardUncertainties!.inharmonicity / b.standardUncertainty;
      expect(Math.abs(ratio - 1), `ratio ${ratio}`).toBeLessThan(0.03);
    },
  );

  it('carry the uncertainty of the strength table into break load and break share', () => {
    const table = {
      ...exactStrength,
      strengthAt: (diameter: number) => {
        const { strength } = exactStrength.strengthAt(diameter);
        return { strength, standardUncertainty: pascals(0.05 * strength), isWithinRange: true };
      },
    };
    const analysis = analyseNote(noteOf(49), { strengthTable: table });
    expect(analysis.contributions!.breakLoad.strength! / analysis.breakLoad).toBeCloseTo(0.05, 10);
    expect(analysis.standardUncertainties!.breakShare / analysis.breakShare).toBeGreaterThan(0.05);
    expect(analysis.standardUncertainties!.tension).toBe(
      analyseNote(noteOf(49), { strengthTable: exactStrength }).standardUncertainties!.tension,
    );
  });

  it('follow the power law of a plain string: 2·d, 2·L, 2·f and ρ in quadrature', () => {
    const { contributions, tension } = analyseNote(noteOf(49));
    const string = noteOf(49).string as PlainString;
    const relative = (input: string): number => contributions!.tension[input]! / tension;
    expect(relative('wireDiameter')).toBeCloseTo((2 * assumed.wireDiameter_m) / string.diameter, 8);
    expect(relative('speakingLength')).toBeCloseTo((2 * assumed.speakingLength_m) / string.speakingLength, 8);
    expect(relative('frequency')).toBeCloseTo(2 * (2 ** (assumed.frequency_cents / 1200) - 1), 8);
    expect(relative('steelDensity')).toBeCloseTo(assumed.steelDensity, 8);
    expect(relative('youngsModulus')).toBe(0);
  });

  it('know that the diameter cancels in the break share of a plain string, but for the table', () => {
    const { contributions, breakShare } = analyseNote(noteOf(49));
    // S falls with d a little: that is all that is left of 2 · 0.5 %.
    expect(Math.abs(contributions!.breakShare.wireDiameter! / breakShare)).toBeLessThan(0.002);
  });

  it('take what was stated with the note before what is assumed', () => {
    const stated: ScaleNote = {
      ...noteOf(1),
      standardUncertainties: {
        wireDiameter: metres(0),
        speakingLength: metres(0),
        frequency: hertz(0),
        layers: [
          { diameterOver: metres(0), bareFront: metres(0), bareBack: metres(0) },
          { diameterOver: metres(4e-5), bareFront: metres(0), bareBack: metres(0) },
        ],
      },
    };
    const { contributions } = analyseNote(stated);
    const inputs = Object.entries(contributions!.tension).filter(([, contribution]) => contribution !== 0);
    expect(inputs.map(([name]) => name).sort()).toEqual(['diameterOver2', 'steelDensity', 'windingDensity']);
    const doubled = analyseNote(noteOf(1)).contributions!.tension.diameterOver2! * 2;
    expect(contributions!.tension.diameterOver2! / doubled).toBeCloseTo(1, 3);
  });

  it('are left out when they are not wanted, with the same figures', () => {
    const withThem = analyseNote(noteOf(49));
    const without = analyseNote(noteOf(49), { uncertainties: 'left out' });
    expect(without.standardUncertainties).toBeUndefined();
    for (const name of noteFigureNames) expect(without[name]).toBe(withThem[name]);
  });

  it('count one reading of a bare end once, also where it stands for two layers', () => {
    const string = noteOf(1).string as WoundString;
    const [inner, outer] = [string.layers[0]!, string.layers[1]!];
    const shared = { ...outer, bareFront: inner.bareFront, bareBack: inner.bareBack };
    const note: ScaleNote = { ...noteOf(1), string: { ...string, layers: [inner, shared] } };
    const { contributions } = analyseNote(note, { woundStrings: 'core formula' });
    expect(Object.keys(contributions!.tension)).not.toContain('bareFront2');
    // Both layers end a millimetre further in: what that does to the tension is what the one input contributes.
    const longer = (by: number): ScaleNote => ({
      ...note,
      string: {
        ...string,
        layers: [inner, shared].map((layer) => ({ ...layer, bareFront: metres(layer.bareFront + by) })),
      },
    });
    const tension = (by: number): number =>
      analyseNote(longer(by), { woundStrings: 'core formula', uncertainties: 'left out' }).tension;
    const change = (tension(assumed.bareEnd_m) - tension(-assumed.bareEnd_m)) / 2;
    expect(contributions!.tension.bareFront1! / change).toBeCloseTo(1, 6);
  });

  it('bear a bare end of zero', () => {
    const string = noteOf(20).string as WoundString;
    const none: ScaleNote = {
      ...noteOf(20),
      string: {
        ...string,
        layers: string.layers.map((layer) => ({ ...layer, bareFront: metres(0), bareBack: metres(0) })),
      },
    };
    expect(analyseNote(none).standardUncertainties!.inharmonicity).toBeGreaterThan(0);
  });
});

describe('the bearing of a note', () => {
  const withBearing: ScaleNote = { ...noteOf(49), bearingAngle: degrees(1) };

  it('is the tension of the unison times the sine of its angle', () => {
    const { bearing, unisonTension } = analyseNote(withBearing);
    expect(bearing!.force).toBeCloseTo(unisonTension * Math.sin(Math.PI / 180), 9);
    expect(analyseNote(noteOf(49)).bearing).toBeUndefined();
  });

  it('has an uncertainty that agrees with Monte Carlo', () => {
    const normal = seededNormals(7);
    const forces = Array.from({ length: 8000 }, () => {
      const drawn = drawNote(withBearing, drawPiano(normal), normal);
      const bearingAngle = radians(withBearing.bearingAngle! + assumed.bearingAngle_rad * normal());
      return analyseNote({ ...drawn, bearingAngle }, { uncertainties: 'left out' }).bearing!.force;
    });
    const ratio = analyseNote(withBearing).bearing!.standardUncertainty! / meanAndDeviation(forces).deviation;
    // Four standard errors of a standard deviation over 8000 draws.
    expect(Math.abs(ratio - 1)).toBeLessThan(0.032);
  });

  it('adds up over a bridge and says how many notes it covers', () => {
    const some = grand.map((note) => (note.key % 2 === 0 ? { ...note, bearingAngle: degrees(1) } : note));
    const { bridges, notes } = analyseScale(some, { woundStrings: 'core formula' });
    const long = bridges.find(({ name }) => name === 'long bridge')!;
    expect(long.bearing!.notes).toBe(34);
    const sum = notes.slice(20).reduce((total, note) => total + (note.bearing?.force ?? 0), 0);
    expect(long.bearing!.force).toBeCloseTo(sum, 9);
    expect(long.bearing!.standardUncertainty!).toBeGreaterThan(0);
    expect(analyseScale(grand, { woundStrings: 'core formula' }).bridges[0]!.bearing).toBeUndefined();
  });
});

describe('standard uncertainties of the loads', () => {
  it('agree with Monte Carlo where pitch and densities err alike over the whole piano', () => {
    const options = { strengthTable: exactStrength, woundStrings: 'core formula' } as const;
    const analysis = analyseScale(grand, options);
    const normal = seededNormals(2026);
    const totals: number[] = [];
    const bass: number[] = [];
    const draws = 800;
    for (let draw = 0; draw < draws; draw += 1) {
      const piano = drawPiano(normal);
      const drawn = analyseScale(
        grand.map((note) => drawNote(note, piano, normal)),
        { ...options, uncertainties: 'left out' },
      );
      totals.push(drawn.total);
      bass.push(drawn.bridges[0]!.load);
    }
    const tolerance = 4 / Math.sqrt(2 * draws) + 0.01;
    const ratio = (uncertainty: number, sample: number[]): number =>
      uncertainty / meanAndDeviation(sample).deviation;
    expect(Math.abs(ratio(analysis.totalUncertainty!, totals) - 1)).toBeLessThan(tolerance);
    expect(Math.abs(ratio(analysis.bridges[0]!.loadUncertainty!, bass) - 1)).toBeLessThan(tolerance);
  });

  it('are larger than if the notes erred independently', () => {
    const analysis = analyseScale(grand, { woundStrings: 'core formula' });
    const independent = Math.hypot(
      ...analysis.notes.map((note) => note.standardUncertainties!.unisonTension),
    );
    expect(analysis.totalUncertainty!).toBeGreaterThan(1.5 * independent);
  });
});
