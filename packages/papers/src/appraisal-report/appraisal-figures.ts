import type {
  GripEstimate,
  LowPinPattern,
  Metres,
  NewtonMetres,
  PinSizeAdvice,
  SectionMean,
} from '@becket/core';
import type { FactOf, Place, Verdict } from '@becket/journal';

/*
 * What is worked out from a job for its appraisal papers and handed in with it: papers work nothing out themselves. Every
 * part may be left out, and the paper then says that it is not known.
 */

export interface AppraisalFigures {
  readonly torque?: TorqueFigures | undefined;
  readonly pins?: PinFigures | undefined;
  readonly comparison?: ComparisonFigures | undefined;
  readonly advice?: AdviceFigures | undefined;
}

/** The torque map as found. */
export interface TorqueFigures {
  readonly field: { readonly pins: readonly unknown[] };
  readonly pins: readonly PinTorqueFigures[];
  readonly sections: readonly TorqueSectionFigures[];
  readonly bins: readonly {
    readonly from: NewtonMetres;
    readonly to: NewtonMetres;
    readonly pins: readonly unknown[];
  }[];
  readonly zone: ZoneFigures | undefined;
  readonly lowBelow: NewtonMetres;
  readonly lowBelowFrom: string;
  readonly pattern: LowPinPattern;
  readonly season: { readonly cautions: readonly string[] };
  readonly questions: readonly { readonly sentence: string }[];
}

export interface PinTorqueFigures {
  readonly key: number;
  readonly string: number | undefined;
  readonly note: string;
  readonly name: string;
  readonly section: string | undefined;
  readonly readings: readonly unknown[];
  readonly byKind: Readonly<Partial<Record<TurningKind, NewtonMetres>>>;
  readonly grip: GripEstimate | undefined;
  readonly whyNoGrip: string | undefined;
  readonly pull: { readonly pull: NewtonMetres } | undefined;
  readonly margin: NewtonMetres | undefined;
  readonly marginUncertainty: NewtonMetres | undefined;
  readonly isLow: boolean | undefined;
  readonly feels: readonly string[];
}

export type TurningKind = 'sharp' | 'flat' | 'slack' | 'not said';

export interface TorqueSectionFigures {
  readonly section: string;
  readonly pins: number;
  readonly read: number;
  readonly withGrip: number;
  readonly low: number;
  readonly mean: SectionMean | undefined;
  readonly lowest: { readonly name: string; readonly grip: GripEstimate | undefined } | undefined;
  readonly byKind: readonly {
    readonly kind: TurningKind;
    readonly count: number;
    readonly mean: NewtonMetres;
  }[];
  readonly zone: ZoneFigures | undefined;
}

/** The chance that a zone of `size` pins in a row lies where no pin was read, and the pin to read next. */
export interface ZoneFigures {
  readonly size: number;
  readonly chanceMissed: number;
  readonly next: { readonly key: number; readonly string: number } | undefined;
}

/** Sizes as found with the step that the rule gives each, and the pins that were tried. */
export interface PinFigures {
  readonly policy: { readonly source: string };
  readonly groups: readonly {
    readonly asFound: string;
    readonly pins: readonly unknown[];
    readonly median: Metres;
    readonly smallest: Metres;
    readonly largest: Metres;
    readonly advice: PinSizeAdvice | undefined;
    readonly adviceRestsOn: string;
  }[];
  readonly testPins: readonly {
    readonly name: string;
    readonly diameter: Metres;
    readonly torque: NewtonMetres;
    readonly feel: FactOf<'test-pin'>['feel'] | undefined;
    readonly note: string | undefined;
    readonly leftOutBecause: string | undefined;
  }[];
  readonly lawSentence: string;
  readonly cautions: readonly string[];
}

/** What has become of a line since an earlier survey. */
export type SurveyChangeFigure =
  | 'grew'
  | 'graver'
  | 'as before'
  | 'reads shorter'
  | 'sound now'
  | 'still sound'
  | 'new'
  | 'not looked at before'
  | 'not looked at again'
  | 'could not be seen now'
  | 'cannot be compared';

/** Lines of this survey beside those copied from earlier ones. */
export interface ComparisonFigures {
  /** The latest first. */
  readonly days: readonly string[];
  readonly lines: readonly {
    readonly label: string;
    readonly place: Place;
    readonly earlierDay: string | undefined;
    readonly change: SurveyChangeFigure;
    readonly grownBy: Metres | undefined;
    readonly sentence: string;
  }[];
}

/** What speaks for and against, and what is still unknown. */
export interface AdviceFigures {
  readonly verdict: Verdict;
  readonly reasons: readonly {
    readonly about: 'structure' | 'plate' | 'pin block' | 'pins' | 'soundboard' | 'what is unknown';
    readonly verdict: Verdict;
    readonly sentence: string;
    readonly figure: string | undefined;
    readonly condition: string | undefined;
    readonly deferTo: string | undefined;
  }[];
  readonly unknown: readonly {
    readonly what: string;
    readonly wouldSettle: string;
    readonly isNeededFirst: boolean;
  }[];
  readonly cautions: readonly string[];
  readonly source: string;
}
