// A scale, and what a shop judges it by

export {
  type AssumedUncertainties,
  COMMON_UNCERTAINTIES,
  type ScaleNote,
  type StringUncertainties,
} from './scale.ts';
export {
  COMMON_SHOP_POLICY,
  type ScaleLimitName,
  type ScaleLimits,
  type ShopLimit,
  type ShopPolicy,
  withLimit,
} from './shop-policy.ts';

// What a scale does, note by note and in all

export {
  type AnalysisOptions,
  analyseNote,
  type InharmonicityMethod,
  type NoteAnalysis,
  type NoteBearing,
} from './note-analysis.ts';
export { carryingDiameter, type NoteFigureName, noteFigureNames } from './note-figures.ts';
export {
  analyseScale,
  type BearingSum,
  type LoadShare,
  reanalyseNote,
  type ScaleAnalysis,
  totalsOf,
} from './scale-analysis.ts';

// What stands out in it

export { type ScaleFinding, type ScaleRule, scaleRules } from './scale-finding.ts';
export { scaleFindings } from './scale-findings.ts';

// Letting the strings down

export {
  type LetDownPass,
  type LetDownSection,
  type LetDownStep,
  type LetDownString,
  letDownCautions,
  letDownPlan,
} from './let-down-plan.ts';
