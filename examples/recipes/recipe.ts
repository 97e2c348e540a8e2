/*
 * An invented piano as a recipe: what its maker decided, and from it the truth about every note.
 * Lengths are in millimetres here, as a maker writes them; the truth is SI.
 */
import {
  diametersOfSize,
  equalTemperedFrequency,
  type Hertz,
  hertz,
  inMillimetres,
  metres,
  millimetres,
  noteName,
  type SizeLattice,
  sizeLabel,
  woundStringTension,
} from '@becket/core';

export interface Run {
  readonly firstKey: number;
  readonly lastKey: number;
}

export interface RecipeSection extends Run {
  readonly section: string;
  readonly bridge: string;
  readonly frontTermination: 'agraffe' | 'capo' | 'pressure bar' | 'plate edge';
}

export interface RecipeUnisons extends Run {
  readonly strings: 1 | 2 | 3;
  readonly winding: 'plain' | 'wound';
  readonly layers: 0 | 1 | 2;
}

export interface Recipe {
  readonly lattice: SizeLattice;
  readonly sections: readonly RecipeSection[];
  readonly unisons: readonly RecipeUnisons[];
  /** Size number from this key up to the next entry: of plain strings the wire, of wound strings the core. */
  readonly sizesFrom: readonly (readonly [firstKey: number, sizeNumber: number])[];
  readonly speakingLength_mm: (key: number) => number;
  /** What the maker of the wound strings aimed at. */
  readonly woundTension_n: (key: number) => number;
  readonly frontLength_mm: (key: number) => number;
  readonly backLength_mm: (key: number) => number;
  readonly bareFront_mm: (key: number) => number;
  readonly bareBack_mm: (key: number) => number;
  readonly pinDiameter_mm: (key: number) => number;
}

/** Everything about one note of an invented piano. SI, the unit in the name. */
export interface TrueNote {
  readonly key: number;
  readonly note: string;
  readonly section: string;
  readonly bridge: string;
  readonly strings: 1 | 2 | 3;
  readonly winding: 'plain' | 'wound';
  readonly frequency_hz: number;
  /** Size number of the plain wire or of the core, as on the coil. */
  readonly size: string;
  /** Plain wire, or core. */
  readonly wireDiameter_m: number;
  readonly speakingLength_m: number;
  /** Inner layer first; empty for a plain string. */
  readonly layers: readonly { readonly wireDiameter_m: number }[];
  readonly bareFront_m: number;
  readonly bareBack_m: number;
  readonly frontLength_m: number;
  readonly backLength_m: number;
  readonly pinDiameter_m: number;
}

/** The truth about every note, bass to treble, for strings at A4 = 440 Hz. */
export function trueNotes(recipe: Recipe): TrueNote[] {
  return recipe.unisons.flatMap((run) => {
    const notes: TrueNote[] = [];
    for (let key = run.firstKey; key <= run.lastKey; key += 1) notes.push(trueNote(recipe, run, key));
    return notes;
  });
}

function trueNote(recipe: Recipe, { strings, winding, layers }: RecipeUnisons, key: number): TrueNote {
  const { section, bridge } = recipe.sections.find((one) => one.firstKey <= key && key <= one.lastKey)!;
  const sizeNumber = recipe.sizesFrom.filter(([firstKey]) => firstKey <= key).at(-1)![1];
  const wireDiameter_mm = inMillimetres(diametersOfSize(recipe.lattice, sizeNumber)[0]!.diameter);
  // The pins on the bridge were set to half a millimetre.
  const speakingLength_mm = Math.round(2 * recipe.speakingLength_mm(key)) / 2;
  const frequency = equalTemperedFrequency(key, hertz(440));
  const bareFront_mm = winding === 'wound' ? Math.round(recipe.bareFront_mm(key)) : 0;
  const bareBack_mm = winding === 'wound' ? Math.round(recipe.bareBack_mm(key)) : 0;
  const windingWires_mm = windingWires({
    layers,
    core_mm: wireDiameter_mm,
    speakingLength_mm,
    bareFront_mm,
    bareBack_mm,
    frequency,
    tension_n: recipe.woundTension_n(key),
  });
  const inMetres = (length_mm: number): number => Number((length_mm / 1000).toFixed(7));
  return {
    key,
    note: noteName(key),
    section,
    bridge,
    strings,
    winding,
    frequency_hz: frequency,
    size: sizeLabel(sizeNumber),
    wireDiameter_m: inMetres(wireDiameter_mm),
    speakingLength_m: inMetres(speakingLength_mm),
    layers: windingWires_mm.map((wire_mm) => ({ wireDiameter_m: inMetres(wire_mm) })),
    bareFront_m: inMetres(bareFront_mm),
    bareBack_m: inMetres(bareBack_mm),
    frontLength_m: inMetres(Math.round(recipe.frontLength_mm(key))),
    backLength_m: inMetres(Math.round(recipe.backLength_mm(key))),
    pinDiameter_m: inMetres(recipe.pinDiameter_mm(key)),
  };
}

/** Winding wires that bring a string as near to its tension as wire in steps of 0.01 mm can. */
function windingWires(string: {
  layers: 0 | 1 | 2;
  core_mm: number;
  speakingLength_mm: number;
  bareFront_mm: number;
  bareBack_mm: number;
  frequency: Hertz;
  tension_n: number;
}): number[] {
  if (string.layers === 0) return [];
  const wiresOf = (whole_mm: number): number[] => {
    const round = (wire_mm: number): number => Math.round(100 * wire_mm) / 100;
    if (string.layers === 1) return [round(whole_mm)];
    const inner_mm = round(0.36 * whole_mm);
    return [inner_mm, round(whole_mm - inner_mm)];
  };
  const tensionOf = (wires_mm: readonly number[]): number =>
    woundStringTension(
      {
        kind: 'wound',
        speakingLength: millimetres(string.speakingLength_mm),
        coreDiameter: millimetres(string.core_mm),
        layers: wires_mm.map((wire_mm) => ({
          wireDiameter: metres(wire_mm / 1000),
          bareFront: millimetres(string.bareFront_mm),
          bareBack: millimetres(string.bareBack_mm),
        })),
      },
      string.frequency,
    );
  let best: number[] = [];
  let smallestMiss = Number.POSITIVE_INFINITY;
  for (let hundredths = 12; hundredths <= 400; hundredths += 1) {
    const wires_mm = wiresOf(hundredths / 100);
    const miss = Math.abs(tensionOf(wires_mm) - string.tension_n);
    if (miss < smallestMiss) [best, smallestMiss] = [wires_mm, miss];
  }
  return best;
}

/** From `from` at the first key to `to` at the last, in a straight line. */
export const between = (key: number, { firstKey, lastKey }: Run, from: number, to: number): number =>
  from + ((to - from) * (key - firstKey)) / (lastKey - firstKey);
