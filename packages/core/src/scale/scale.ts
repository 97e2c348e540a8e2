import type { PlainString, WoundString } from '../strings/index.ts';
import type { Hertz, Metres, Radians } from '../units/index.ts';
import { message } from '../words/index.ts';

/** One note of a scale: what its strings are, how many there are, and where they stand. */
export interface ScaleNote {
  /** 1 = A0 … 88 = C8. */
  readonly key: number;
  /** Run of notes between two plate struts, by the name the user gave it. */
  readonly section: string;
  readonly bridge: string;
  readonly strings: 1 | 2 | 3;
  /** First mode of the flexible string at pitch. */
  readonly frequency: Hertz;
  /** Every string of the unison is taken to be like this one, unless `individualStrings` says otherwise. */
  readonly string: PlainString | WoundString;
  /** Where the strings of the unison were read one by one: each of them, left to right, as many as `strings`. */
  readonly individualStrings?: readonly (PlainString | WoundString)[];
  /** Whole angle by which the bridge turns the strings out of a straight line; left out where it was not read. */
  readonly bearingAngle?: Radians;
  /** What the readings are worth; whatever is left out falls to the shop's assumed uncertainties. */
  readonly standardUncertainties?: StringUncertainties;
}

/** Standard uncertainties of what was read of one note's strings. */
export interface StringUncertainties {
  /** Of the plain wire, or of the core. */
  readonly wireDiameter?: Metres;
  readonly speakingLength?: Metres;
  readonly frequency?: Hertz;
  readonly bearingAngle?: Radians;
  /** Inner layer first, as in the string. */
  readonly layers?: readonly {
    /** Of the diameter measured over this layer. */
    readonly diameterOver?: Metres;
    readonly bareFront?: Metres;
    readonly bareBack?: Metres;
  }[];
}

/** The uncertainties that are assumed where none were stated: plain data, part of the shop's policy. */
export interface AssumedUncertainties {
  readonly source: string;
  /** Of a clean wire under a micrometer. */
  readonly wireDiameter_m: number;
  /** Over a winding, which is neither round nor smooth. */
  readonly diameterOver_m: number;
  readonly speakingLength_m: number;
  readonly bareEnd_m: number;
  readonly bearingAngle_rad: number;
  /** How well the pitch in the calculation is the pitch of the piano. */
  readonly frequency_cents: number;
  /** As a share of the density. */
  readonly steelDensity: number;
  /** As a share of the density; it also stands for how well touching round turns describe the winding. */
  readonly windingDensity: number;
  /** As a share of the modulus. */
  readonly youngsModulus: number;
  /** As a share of the expansion of the wire per kelvin. */
  readonly expansion: number;
}

/**
 * Standard uncertainties where nothing better is known. Common practice for the instruments: a micrometer that resolves
 * 0.01 mm used on cleaned wire, a steel rule; the material figures are the spread of the handbook values named in
 * `core/tables`. No other source.
 */
export const COMMON_UNCERTAINTIES: AssumedUncertainties = {
  source: message('common practice'),
  wireDiameter_m: 0.005e-3,
  diameterOver_m: 0.02e-3,
  speakingLength_m: 1e-3,
  bareEnd_m: 1e-3,
  bearingAngle_rad: (0.1 * Math.PI) / 180,
  frequency_cents: 0.5,
  steelDensity: 0.002,
  windingDensity: 0.01,
  youngsModulus: 0.02,
  expansion: 0.05,
};
