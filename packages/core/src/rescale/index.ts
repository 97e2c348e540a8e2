// The best plain sizes under stated rules

export {
  bestPlainGauges,
  type GaugeNote,
  gaugeObjective,
  type PlainGaugeAnswer,
  type PlainGaugeProblem,
} from './plain-gauges.ts';

// The best whole scale: plain and wound strings together

export { type RescaleNotesOptions, rescaleNotes } from './rescale-notes.ts';
export type { ScaleClash, ScheduleRuleName } from './scale-clash.ts';
export { type ObjectiveParts, scaleObjective, weighedSum } from './scale-objective.ts';
export {
  isSameString,
  type NoteCandidates,
  type StringCandidate,
  type StringLimitName,
} from './string-candidates.ts';
export {
  type AnsweredLoad,
  bestPreparedScale,
  bestWholeScale,
  type ChosenString,
  type NoWholeScale,
  type PreparedScale,
  prepareScale,
  type ScaleProof,
  type WholeScaleAnswer,
} from './whole-scale.ts';
export {
  COMMON_RESCALE_RULES,
  COMMON_RESCALE_WEIGHTS,
  COMMON_WINDING_WIRES,
  type LoadLimit,
  type RescaleNote,
  type RescaleRules,
  type RescaleWeights,
  type WholeScaleProblem,
  type WindingEnds,
  type WireCatalogue,
} from './whole-scale-problem.ts';

// Several answers side by side, and what they hang on

export {
  type FrontAnswer,
  type FrontProgress,
  type NoScaleFront,
  type PlainWireNeed,
  type ScaleFront,
  type StringChange,
  scaleFront,
  weightsAtPlace,
  wholeScaleFront,
} from './scale-front.ts';
export {
  type BothWays,
  type FigureChange,
  type NoteSensitivity,
  type SensitivitySteps,
  scaleSensitivity,
} from './scale-sensitivity.ts';

// Whether to change the scale at all, and what the break will sound like

export { type BreakBeat, type BreakBeats, type BreakEvenness, breakBeats } from './break-beats.ts';
export {
  COMMON_LEAVE_ALONE_POLICY,
  type InstrumentAge,
  type LeaveAloneAdvice,
  type LeaveAlonePolicy,
  type LeaveAloneRule,
  reasonsToLeaveAlone,
} from './leave-alone.ts';

// Which strings share a wire, and how long to cut it

export {
  type ChangeShift,
  type CutLength,
  type CutLengthParts,
  cutLength,
  type LoopPlan,
  loopPlan,
  type PlannedWire,
  type PlanString,
  shiftsThatSaveTies,
} from './loop-plan.ts';
