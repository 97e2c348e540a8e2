import type { PlainString, WoundString } from '../strings/index.ts';
import { COPPER_DENSITY, STEEL_DENSITY, STEEL_EXPANSION_PER_KELVIN } from '../tables/index.ts';
import {
  type Estimate,
  hertz,
  kilogramsPerCubicMetre,
  type Metres,
  metres,
  type Pascals,
  pascals,
} from '../units/index.ts';
import type { AssumedUncertainties, ScaleNote } from './scale.ts';

/*
 * What is uncertain about a note, as independent inputs by name, and back from such inputs to a string.
 *
 * The diameter OVER each layer is an input and the winding wire is what lies between two of them: that is how strings are
 * measured, and the thickness of a layer is not independent of the core that was measured under it. Layers whose bare ends
 * are given with the same length are taken to have them from one reading, so that it counts once.
 */

/** Inputs that are the same for every note of one piano: their errors add up over the notes instead of cancelling. */
export const COMMON_INPUTS: ReadonlySet<string> = new Set([
  'frequency',
  'steelDensity',
  'windingDensity',
  'youngsModulus',
  'strength',
  'expansion',
]);

export type NoteInputs = Readonly<Record<string, Estimate>>;

/** The independent inputs of a note with their standard uncertainties. `strength` is a factor on the table's figure. */
export function noteInputs(
  note: ScaleNote,
  assumed: AssumedUncertainties,
  youngsModulus: Pascals,
  relativeStrengthUncertainty: number,
): NoteInputs {
  const { string, standardUncertainties: stated = {} } = note;
  const steelDensity = string.steelDensity ?? STEEL_DENSITY;
  const inputs: Record<string, Estimate> = {
    frequency: {
      value: note.frequency,
      standardUncertainty: stated.frequency ?? note.frequency * (2 ** (assumed.frequency_cents / 1200) - 1),
    },
    speakingLength: {
      value: string.speakingLength,
      standardUncertainty: stated.speakingLength ?? assumed.speakingLength_m,
      isPositive: true,
    },
    wireDiameter: {
      value: string.kind === 'plain' ? string.diameter : string.coreDiameter,
      standardUncertainty: stated.wireDiameter ?? assumed.wireDiameter_m,
      isPositive: true,
    },
    steelDensity: { value: steelDensity, standardUncertainty: assumed.steelDensity * steelDensity },
    youngsModulus: { value: youngsModulus, standardUncertainty: assumed.youngsModulus * youngsModulus },
    strength: { value: 1, standardUncertainty: relativeStrengthUncertainty },
    expansion: {
      value: STEEL_EXPANSION_PER_KELVIN,
      standardUncertainty: assumed.expansion * STEEL_EXPANSION_PER_KELVIN,
    },
  };
  if (string.kind === 'wound') {
    const windingDensity = string.windingDensity ?? COPPER_DENSITY;
    inputs.windingDensity = {
      value: windingDensity,
      standardUncertainty: assumed.windingDensity * windingDensity,
    };
    let diameterOver: number = string.coreDiameter;
    string.layers.forEach((layer, index) => {
      const own = stated.layers?.[index] ?? {};
      diameterOver += 2 * layer.wireDiameter;
      inputs[`diameterOver${index + 1}`] = {
        value: diameterOver,
        standardUncertainty: own.diameterOver ?? assumed.diameterOver_m,
        isPositive: true,
      };
      for (const end of ['bareFront', 'bareBack'] as const) {
        if (index > 0 && layer[end] === string.layers[0]![end]) continue;
        inputs[`${end}${index + 1}`] = {
          value: layer[end],
          standardUncertainty: own[end] ?? assumed.bareEnd_m,
          least: 0,
        };
      }
    });
  }
  return inputs;
}

/** The string and pitch that a set of inputs describes, shaped like the note they came from. */
export function noteFromInputs(
  like: PlainString | WoundString,
  inputs: Readonly<Record<string, number>>,
): Pick<ScaleNote, 'string' | 'frequency'> {
  const of = (name: string): number => inputs[name]!;
  const length = (name: string): Metres => metres(of(name));
  const material = {
    steelDensity: kilogramsPerCubicMetre(of('steelDensity')),
    youngsModulus: pascals(of('youngsModulus')),
  };
  const frequency = hertz(of('frequency'));
  if (like.kind === 'plain') {
    return {
      frequency,
      string: {
        kind: 'plain',
        speakingLength: length('speakingLength'),
        diameter: length('wireDiameter'),
        ...material,
      },
    };
  }
  let diameterUnder = of('wireDiameter');
  const layers = like.layers.map((_, index) => {
    const diameterOver = of(`diameterOver${index + 1}`);
    const wireDiameter = metres((diameterOver - diameterUnder) / 2);
    diameterUnder = diameterOver;
    return {
      wireDiameter,
      bareFront: length(`bareFront${index + 1}` in inputs ? `bareFront${index + 1}` : 'bareFront1'),
      bareBack: length(`bareBack${index + 1}` in inputs ? `bareBack${index + 1}` : 'bareBack1'),
    };
  });
  return {
    frequency,
    string: {
      kind: 'wound',
      speakingLength: length('speakingLength'),
      coreDiameter: length('wireDiameter'),
      layers,
      windingDensity: kilogramsPerCubicMetre(of('windingDensity')),
      ...material,
    },
  };
}
