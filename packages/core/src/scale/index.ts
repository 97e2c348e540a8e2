// A scale and what it does

// Letting it down
export {
  type LetDownPass,
  type LetDownSection,
  type LetDownStep,
  type LetDownString,
  letDownCautions,
  letDownPlan,
} from './let-down-plan.ts';
export {
  type AnalysisOptions,
  analyseNote,
  carryingDiameter,
  type InharmonicityMethod,
  type NoteAnalysis,
} from './note-analysis.ts';
export type { ScaleNote } from './scale.ts';
export {
  analyseScale,
  type LoadShare,
  reanalyseNote,
  type ScaleAnalysis,
  totalsOf,
} from './scale-analysis.ts';
