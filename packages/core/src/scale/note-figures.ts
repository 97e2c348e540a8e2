import {
  breakLoad,
  elongation,
  fullLinearDensity,
  inharmonicity,
  longitudinalMode,
  type PlainString,
  pitchPerKelvin,
  plainLinearDensity,
  stringImpedance,
  stringTension,
  type WoundString,
  wireStress,
  woundStringTension,
} from '../strings/index.ts';
import { STEEL_EXPANSION_PER_KELVIN, type WireStrengthTable } from '../tables/index.ts';
import { type Hertz, type Metres, newtons, pascals } from '../units/index.ts';
import type { ExactCorrections } from './exact-corrections.ts';

/** The figures of one note that carry an uncertainty. */
export const noteFigureNames = [
  'tension',
  'unisonTension',
  'linearDensity',
  'stress',
  'breakLoad',
  'breakShare',
  'inharmonicity',
  'impedance',
  'elongation',
  'longitudinalMode',
  'pitchPerKelvin',
] as const;
export type NoteFigureName = (typeof noteFigureNames)[number];
export type NoteFigures = Readonly<Record<NoteFigureName, number>>;

/** What the figures of a note rest on besides the string itself. */
export interface FigureBasis {
  readonly strengthTable: WireStrengthTable;
  /** Tension of the unison over the tension of the one string that stands for it. */
  readonly stringsWorth: number;
  readonly corrections: ExactCorrections;
  /** Factor on the strength that the table gives; 1 when not given. */
  readonly strengthFactor?: number | undefined;
  /** Expansion of the wire per kelvin. */
  readonly expansion?: number | undefined;
}

/** Every figure of one note, in SI, from the pages of `core/strings`. */
export function noteFigures(
  string: PlainString | WoundString,
  frequency: Hertz,
  { strengthTable, stringsWorth, corrections, strengthFactor = 1, expansion }: FigureBasis,
): NoteFigures {
  const tension = newtons(corrections.tensionFactor * tensionInClosedForm(string, frequency));
  const steel = carryingDiameter(string);
  const { speakingLength, youngsModulus } = string;
  const linearDensity =
    string.kind === 'plain'
      ? plainLinearDensity({ diameter: string.diameter, density: string.steelDensity })
      : fullLinearDensity(string);
  const strength = pascals(strengthFactor * strengthTable.strengthAt(steel).strength);
  const load = breakLoad({ diameter: steel, strength });
  return {
    tension,
    unisonTension: stringsWorth * tension,
    linearDensity,
    stress: wireStress({ tension, diameter: steel }),
    breakLoad: load,
    breakShare: tension / load,
    inharmonicity:
      inharmonicity({ diameter: steel, speakingLength, tension, youngsModulus }) +
      corrections.inharmonicityOfEnds,
    impedance: stringImpedance({ tension, linearDensity }),
    elongation: elongation({ tension, length: speakingLength, diameter: steel, youngsModulus }),
    longitudinalMode: longitudinalMode({ speakingLength, coreDiameter: steel, linearDensity, youngsModulus }),
    pitchPerKelvin: pitchPerKelvin({
      tension,
      diameter: steel,
      youngsModulus,
      stringExpansion: expansion ?? STEEL_EXPANSION_PER_KELVIN,
    }),
  };
}

/** Diameter of the wire that carries the tension: of a wound string its core. */
export function carryingDiameter(string: PlainString | WoundString): Metres {
  return string.kind === 'plain' ? string.diameter : string.coreDiameter;
}

/** Tension that puts the first mode of the flexible string at a frequency; of a wound string a little low. */
export function tensionInClosedForm(string: PlainString | WoundString, frequency: Hertz): number {
  if (string.kind === 'wound') return woundStringTension(string, frequency);
  const { diameter, speakingLength, steelDensity: density } = string;
  return stringTension({ diameter, speakingLength, frequency, density });
}
