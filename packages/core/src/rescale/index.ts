// The best plain sizes under stated rules

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
export {
  bestPlainGauges,
  type GaugeNote,
  gaugeObjective,
  type PlainGaugeAnswer,
  type PlainGaugeProblem,
} from './plain-gauges.ts';
