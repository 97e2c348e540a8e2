// The estimate, its answers, and the hours it learns from

export { type EstimateTotals, estimateTotals } from '@becket/core';
export { type EstimateStanding, estimateStanding } from '@becket/journal';
export { type ChangeOrderByAnswer, changeOrderByAnswer } from './appraise/change-answers.ts';
export {
  draftEstimate,
  type EstimateDraft,
  type EstimateRates,
  type NotPricedLine,
} from './appraise/estimate.ts';
export {
  type AnswerToChange,
  type AnswerToEstimate,
  answerChange,
  answerEstimate,
  type EstimateOutcome,
  type EstimateToMake,
  type HoursToRecord,
  makeEstimate,
  recordHours,
} from './appraise/estimate-commands.ts';
export {
  type LabourStep,
  type LabourUnit,
  type PianoCounts,
  pianoCounts,
  STARTING_LABOUR_STEPS,
  startingLabourSteps,
} from './appraise/labour-steps.ts';
export { type LearnedHours, learnedHours } from './appraise/learned-hours.ts';

// Appraise

// Hand over
export { commonCautions, raisingCautions } from '@becket/papers';
export {
  compareSurveys,
  EXTENT_READING_ERROR,
  type Finding,
  placeInWords,
  type SurveyChange,
  type SurveyComparison,
  type SurveyComparisonLine,
} from './appraise/compare-surveys.ts';
export {
  compareTorque,
  compareTorqueMaps,
  type PinBeforeAndAfter,
  type TorqueComparison,
} from './appraise/compare-torque.ts';
export { type CopiedSurvey, copyEarlierSurvey } from './appraise/copy-earlier-survey.ts';
export {
  type DecisionAdvice,
  type DecisionToRecord,
  decisionAdvice,
  recordDecision,
} from './appraise/decision-advice.ts';
export type { DecisionReason } from './appraise/decision-reason.ts';
export { DECISION_LIMITS, FINDING_RULES, type FindingRule } from './appraise/decision-rules.ts';
export type { StillUnknown } from './appraise/decision-unknowns.ts';
export type { PinMeasured } from './appraise/measured-pins.ts';
export type { ExpectedGrips, PinCandidate } from './appraise/pin-candidates.ts';
export { type PinChoice, type PinChoiceOptions, pinChoice } from './appraise/pin-choice.ts';
export {
  choosePinRemedy,
  logPinsDriven,
  type PinLimitsToSet,
  type PinPolicyToSet,
  type PinRemedyToChoose,
  type PinsToLog,
  recordTestPin,
  setPinLimits,
  setPinPolicy,
  type TestPinToRecord,
} from './appraise/pin-commands.ts';
export type { PinCount, PinCounts } from './appraise/pin-counts.ts';
export type { PinDriving, PinsDrivenLine } from './appraise/pin-driving.ts';
export { type PinField, type PinPlace, pinFieldOf, pinName } from './appraise/pin-field.ts';
export type { PinGroup } from './appraise/pin-groups.ts';
export type { PinLimitsKnown } from './appraise/pin-limits.ts';
export type { PinStage, StringPullFigure } from './appraise/pin-pulls.ts';
export type { PinRemedy, SuggestedRemedy } from './appraise/pin-remedies.ts';
export type { PinTorque } from './appraise/pin-torque.ts';
export { type PinTorqueMap, pinTorqueMap, type TorqueMapOptions } from './appraise/pin-torque-map.ts';
export { type FindingToRecord, recordFindings } from './appraise/record-finding.ts';
export type { TestPinTried } from './appraise/test-pins.ts';
export type { AccuracyOfPin } from './appraise/torque-accuracy.ts';
export {
  type HumidityAtReading,
  type PinFeel,
  type TorqueKind,
  type TorqueQuestion,
  type TorqueRead,
  torqueKinds,
} from './appraise/torque-readings.ts';
export type { TorqueSeason } from './appraise/torque-season.ts';
export type { TorqueBin, TorqueSection, ZoneChance } from './appraise/torque-sections.ts';
// What every task is handed
export { JobNotFound, RecordIsSealed, readJob, type TaskContext } from './context.ts';
// An invented piano to try things on
export { appraiseDemoJob } from './demo/invented-appraisal.ts';
export { settleDemoJob } from './demo/invented-settling.ts';
export { openDemoJob } from './demo/open-demo-job.ts';
// Describe the instruments
export { describeInstrument, type InstrumentToDescribe } from './describe-instrument.ts';
// Describe the piano
export { describeJob } from './describe-job.ts';
export { checkSections, describePiano, describeSections, describeUnisons } from './describe-piano.ts';
export { errorSentence, isForTheUser } from './error-sentence.ts';
// Lengths of a section
export {
  fittedLengths,
  LENGTH_INTERVAL_LEVEL,
  type NoteLength,
  type SectionLengths,
  type WoundDoubts,
  woundDoubts,
} from './fitted-lengths.ts';
// Found after the strip
export {
  type ChangeOrderTotals,
  changeOrderTotals,
  type DamageToRecord,
  recordDamage,
} from './found-after-strip.ts';
export { deviationInWords } from './hand-over/deviation-words.ts';
export {
  type HandOverOutcome,
  type HandOverToMake,
  handOver,
} from './hand-over/hand-over-commands.ts';
export { type OpenThing, stillOpen } from './hand-over/still-open.ts';
export { wantedWires } from './hand-over/wanted-wires.ts';
// Bring in a table of readings
export { bringInReadings, CellsNotReadable } from './import/bring-in-readings.ts';
export { type CellChange, cellChangeSchema, parseCellChanges } from './import/cell-changes.ts';
export type { CellProblem, CellQuestion } from './import/cell-report.ts';
export {
  type ColumnMapping,
  type ColumnMeaning,
  columnMappingSchema,
  columnMeaningSchema,
  parseMapping,
  suggestMapping,
} from './import/column-mapping.ts';
export { type DoubtfulReading, doubtfulReadings } from './import/doubtful-readings.ts';
export { type ImportPlan, planImport } from './import/plan-import.ts';
export {
  LARGEST_FILE_BYTES,
  MOST_COLUMNS,
  MOST_ROWS,
  type ReadTable,
  readTable,
  requireTableSize,
} from './import/read-table.ts';
// Wire sizes from worn readings
export {
  type InferredWireSize,
  type InferredWireSizes,
  inferredWireSizes,
  type ReadForWireSizes,
  type WireLatticeName,
  wireLatticeNames,
  wireLattices,
} from './infer-wire-sizes.ts';
// A job as one file
export { type BroughtInJob, bringInJob } from './job-file/bring-in-job.ts';
export { photosNamed, type SavedJob, saveJob } from './job-file/save-job.ts';
// Letting the strings down
export { type LetDown, letDownOf, letDownPasses } from './let-down.ts';
// Jobs
export { type ListedJob, listJobs } from './list-jobs.ts';
// Papers
export {
  type MadePaper,
  makePaper,
  type PaperFormat,
  type PaperName,
  type PaperToMake,
  paperFormats,
  paperNames,
  paperSizes,
} from './make-paper.ts';
export { noteRuns } from './note-runs.ts';
export { correctOpening, type NewJob, openJob } from './open-job.ts';
// Order: what is needed, the stock of the shop, suppliers and orders
export {
  type Allowance,
  type AllowanceGroup,
  type AllowanceName,
  type AllowanceToSet,
  allowanceGroups,
  allowanceNames,
  allowances,
  bassAllowancesOf,
  orderPolicyOf,
  receivedTolerancesOf,
  requireAllowance,
  setAllowance,
  takeBackAllowance,
} from './order/allowances.ts';
export {
  BassOrderNotReady,
  draftBassOrder,
  readBassOrder,
  signBassChecks,
} from './order/bass-commands.ts';
export { itemNamed, quantityOf } from './order/item-named.ts';
export { itemWords, quantityWords } from './order/item-words.ts';
export { type OrderPolicy, STARTING_ORDER_POLICY } from './order/order-policy.ts';
export {
  type OrderedFrom,
  type OrderedLength,
  type OrderString,
  type OrderStrings,
  orderStrings,
} from './order/order-strings.ts';
export {
  draftSupplyOrder,
  moveOrder,
  type OrderMove,
  readOrders,
  receiveGoods,
  undoDelivery,
} from './order/orders.ts';
export {
  keepPriceList,
  type PriceListToKeep,
  priceListColumns,
  priceListExample,
} from './order/price-list.ts';
export { allowancesInWords } from './order/purchase-figures.ts';
export {
  daysBefore,
  type PurchaseLine,
  type PurchaseList,
  type PurchaseWish,
  packWords,
  purchaseForShelf,
  purchaseList,
  type SupplierPurchase,
} from './order/purchase-list.ts';
export {
  acceptDifference,
  type ReceivedComparison,
  type ReceivedStrings,
  type ReceivedTolerances,
  receivedQuantityNames,
  receivedStrings,
  STARTING_RECEIVED_TOLERANCES,
} from './order/received-strings.ts';
export { readShop, type Shop, shopOf } from './order/shop.ts';
export { sourcesInWords } from './order/sources-in-words.ts';
export {
  noteStock,
  releaseReservation,
  reserveForJob,
  type StockMove,
  takeReserved,
  withdrawStockMove,
} from './order/stock-commands.ts';
export {
  type Cover,
  coverFromStock,
  type ReorderLine,
  reorderList,
  type Shortage,
  shortagesOf,
} from './order/stock-cover.ts';
export { stringingFigures } from './order/stringing-figures.ts';
export {
  type GoingOnState,
  goingOnStates,
  type StringToGoOn,
  stringsToGoOn,
} from './order/strings-to-go-on.ts';
export { type Supplies, suppliesOf } from './order/supplies.ts';
export { type SupplyGroup, type SupplyLine, type SupplySource, supplyGroups } from './order/supply-line.ts';
export { type WireCut, type WireCuts, wireCuts } from './order/wire-cuts.ts';
// Record
export { type FactToRecord, recordFacts, type SaidKind } from './record-facts.ts';
// Photos
export {
  changePhoto,
  type PhotoChange,
  type PhotoToRecord,
  recordPhoto,
  undoPhotoChange,
  withdrawPhoto,
} from './record-photo.ts';
export {
  type ReadingToRecord,
  readingFact,
  recordAbsence,
  recordObservation,
  recordReadings,
  takeBackEntry,
  withdrawEntry,
} from './record-reading.ts';
// Scale
export {
  type AnalysedScale,
  analysedScale,
  comparedScales,
  isAnythingStrung,
} from './scale/analysed-scale.ts';
export { costOfScale, jobWithScale, type ScaleToPay } from './scale/cost-of-scale.ts';
export {
  type HeardPassage,
  heardPassage,
  type PassageName,
  passages,
  type ToHear,
} from './scale/hear-scale.ts';
export {
  type LoopedString,
  loopsAndCuts,
  type SectionLoops,
  type ShiftOffered,
  type WireToCut,
} from './scale/loops-and-cuts.ts';
export { type NotesLeftOut, notesLeftOut, whyNotComputed } from './scale/notes-left-out.ts';
export { type NudgedWire, nudgedNote } from './scale/nudge-note.ts';
export {
  type Emphasis,
  emphases,
  keptRules,
  type PartLoadLimit,
  type PlannedScale,
  type PlannedScales,
  type PlanRules,
  STARTING_PLAN_RULES,
} from './scale/plan-scales.ts';
export {
  chooseScale,
  proposeScale,
  type ScaleOutcome,
  type ScaleToPropose,
  staleSentence,
} from './scale/scale-commands.ts';
export { tidiedScale } from './scale/tidied-scale.ts';
export { type ScaleAsFound, scaleAsFound } from './scale-as-found.ts';
// Settle
export {
  beginPass,
  type FollowUpToPlan,
  type FollowUpToRecord,
  type MishapToRecord,
  type OverpullLimitToSet,
  type PassToBegin,
  type PassToRecord,
  type PassValueToRecord,
  planFollowUp,
  recordFollowUp,
  recordMishap,
  recordPass,
  recordPassValues,
  type SettlingOutcome,
  setOverpullLimit,
} from './settle/settle-commands.ts';
export { planRemarks } from './settle/settling-figures.ts';
// String
export {
  noteStringingMishap,
  putWireOn,
  type StringingMishapToNote,
  type StringingOutcome,
  type WireToPutOn,
} from './string/stringing-commands.ts';
export {
  nextWire,
  type SectionStrung,
  type StringingCourse,
  type StringingOrder,
  stringingCourse,
  stringingOrders,
  type WireToString,
} from './string/stringing-course.ts';
// Before the strip
export { acceptGaps, SurveyIncomplete, sealRecord } from './strip-record.ts';

// Languages

export { type LanguageTag, languageFor, languageNames } from './language-for.ts';
