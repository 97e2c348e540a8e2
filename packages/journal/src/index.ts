// Entries

export { canonicalText, digestOf } from './canonical.ts';
export {
  type Entry,
  firstProblem,
  isKnownFact,
  parseEntry,
  problemOfNewFact,
  type UnknownFact,
} from './entry.ts';
export { absences, type ObservedThing, observedThingNames, observedThings } from './facts/answer.ts';

// Facts
export { damageGravities } from './facts/damage-found.ts';
export { type Verdict, verdicts } from './facts/decision-made.ts';
export { currencySchema, type EstimateLine, estimateLineSchema } from './facts/estimate.ts';
export {
  findingGravities,
  findingRemedies,
  repairStates,
  type SurveyPart,
  type SurveyThing,
  surveyParts,
  surveyThingNames,
  surveyThings,
} from './facts/finding.ts';
export { type ReceivedQuantity, receivedQuantities } from './facts/goods-received.ts';
export { type Fact, type FactOf, factSchema, isAsFoundFact, type Reading } from './facts/index.ts';
export {
  instrumentUncertainty,
  type StatedAs,
  waysOfStating,
} from './facts/instrument-described.ts';
export { lengthKindOf } from './facts/length-kind.ts';
export { orderSteps } from './facts/order-made.ts';
export { type PriceLine, priceLineSchema } from './facts/order-supplier.ts';
export { type PhotoMark, type PhotoStage, photoMarkSchema, photoStages } from './facts/photo.ts';
export { pianoDescribedSchema } from './facts/piano-described.ts';
export { pinRemedies } from './facts/pin-choice.ts';
export { keySchema, type Place, placeSchema } from './facts/place.ts';
export {
  dimensionOfUnit,
  type ReadUnit,
  readUnits,
  siFromRead,
  unitsForDimension,
} from './facts/read-units.ts';
export { conditionSchema, origins, pinFeels, stages, stringStates, wireSurfaces } from './facts/reading.ts';
export {
  isSmallQuantity,
  quantitiesOverSpan,
  type ReadingQuantity,
  type ReadingQuantityName,
  readingQuantities,
  readingQuantityNames,
} from './facts/reading-quantities.ts';
export { type ProposedNote, proposedOrigins } from './facts/scale-proposed.ts';
export { frontTerminations, windings } from './facts/section-described.ts';
export { followUpKinds, mishaps, type PassValueKind, passValueKinds } from './facts/settling.ts';
export { softPartMost } from './facts/soft-part.ts';
export {
  type StockItem,
  type StockUnit,
  stockItemId,
  stockItemSchema,
  stockUnitOf,
} from './facts/stock-item.ts';
export { type StringingMishap, stringingMishaps } from './facts/stringing.ts';
export type { StringPlace } from './facts/wire-path.ts';
// A job as a file
export { readJournalLines, type UnreadLine, writeJournalLines } from './file/journal-lines.ts';
// From entries to a job
export { factMeant } from './fold/amendment.ts';
export { type AllowanceKept, foldAllowances } from './fold/fold-allowances.ts';
export { foldHandOver, type HandOver } from './fold/fold-hand-over.ts';
export { foldJob } from './fold/fold-job.ts';
export {
  foldOrders,
  type Order,
  type OrderedLine,
  type OrderState,
  type Orders,
  orderStates,
  type ReceivedMeasure,
} from './fold/fold-orders.ts';
export {
  type FollowUp,
  foldSettling,
  type OverpullLimit,
  type Pass,
  type PassSection,
  type PassValue,
  type Settling,
} from './fold/fold-settling.ts';
export {
  foldStock,
  type Reservation,
  SHOP_JOURNAL,
  type Stock,
  type StockLine,
} from './fold/fold-stock.ts';
export { foldStringing, type Stringing, stringName, type WireOn } from './fold/fold-stringing.ts';
export type {
  Amendment,
  Job,
  Piano,
  Section,
  Standing,
  StandingReading,
  UnisonDescription,
} from './fold/job.ts';
export { compareEntries, mergeJournals, nextStep } from './fold/order.ts';
// Photos: their bytes, and lengths read off them
export {
  type PhotoMediaType,
  photoFileEndings,
  photoTypeOf,
  tellingParts,
  withoutTellingParts,
} from './photo/photo-bytes.ts';
export { type PhotoDistance, type PhotoScale, photoScale } from './photo/photo-distances.ts';
// The as-found record, the strip check and the seal
export { answersThatStand } from './record/answers-that-stand.ts';
export {
  type Absence,
  type AsFoundNote,
  type AsFoundRecord,
  asFoundRecord,
  type Figure,
} from './record/as-found-record.ts';
// Orders and the stock of the shop
export type { BassCheck } from './record/bass-checks.ts';
export { type BassOrder, bassOrder, changedSinceOrder } from './record/bass-order.ts';
export {
  type BassAllowances,
  type BassQuantity,
  type BassString,
  bassQuantities,
  STARTING_BASS_ALLOWANCES,
  type Stated,
} from './record/bass-string.ts';
// The estimate and its answers
export {
  answerTo,
  type EstimateAnswer,
  type EstimateStanding,
  estimateStanding,
  type MadeEstimate,
} from './record/estimate-standing.ts';
// Which strings share a wire
export {
  type LoopMap,
  type LoopMapOptions,
  type LoopQuestion,
  loopMap,
  stringsInOrder,
} from './record/loop-map.ts';
export { neededQuantities } from './record/needed-quantities.ts';
// Scales that might be strung, beside the one that was found
export {
  asProposedNote,
  type ChosenScale,
  chosenScaleOf,
  proposedScaleNotes,
  proposedString,
  type ScaleNotes,
  scaleDigest,
  scaleNotesOf,
  type WhichScale,
} from './record/proposed-scale.ts';
export {
  type BeatInBoth,
  breaksOf,
  hasSameWires,
  inEqualTemperament,
  type LoadInBoth,
  type NoteInBoth,
  type ScaleComparison,
  scaleComparison,
  tensionUnevenness,
  tuned,
  type WireNeeded,
  wiresNeeded,
} from './record/scale-comparison.ts';
// The strings that are on now, and how they settle
export {
  isFinished,
  offsetOf,
  PASS_READING_UNCERTAINTY,
  type PassPlan,
  passPlan,
  raisesOf,
  type SectionLimit,
  type SectionOffset,
  type SectionPlan,
  type SettlingLimits,
  STARTING_OVERPULL_LIMIT,
  settlingLimits,
} from './record/settling-plan.ts';
export {
  STRUNG_TOLERANCES,
  type StrungDeviation,
  type StrungNote,
  type StrungScale,
  strungDeviations,
  strungScale,
} from './record/strung-scale.ts';
export { type WoundQuantity, woundReadingsOf } from './record/wound-readings.ts';
export { type MeasuredAnswer, measuredAnswer } from './strip/measured-answer.ts';
export { isSealIntact, sealOf } from './strip/seal.ts';
export { type Gap, type GapRank, gapRanks, type StripCheck, stripCheck } from './strip/strip-check.ts';
export { newUlid, type Ulid, ulidSchema } from './ulid.ts';
