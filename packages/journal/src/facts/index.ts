import { z } from 'zod';
import { allowanceSetSchema } from './allowance-set.ts';
import { observationSchema, readingAbsentSchema } from './answer.ts';
import { damageFoundSchema } from './damage-found.ts';
import { decisionMadeSchema } from './decision-made.ts';
import {
  changeAnsweredSchema,
  estimateAnsweredSchema,
  estimateMadeSchema,
  hoursWorkedSchema,
} from './estimate.ts';
import { findingSchema } from './finding.ts';
import { goodsReceivedSchema } from './goods-received.ts';
import { handedOverSchema } from './hand-over.ts';
import { readingsImportedSchema, withdrawnSchema } from './housekeeping.ts';
import { instrumentDescribedSchema } from './instrument-described.ts';
import { jobOpenedSchema } from './job-opened.ts';
import { orderCheckSignedSchema, orderDraftedSchema, orderMovedSchema } from './order-made.ts';
import { priceListKeptSchema, supplierDescribedSchema } from './order-supplier.ts';
import { photoSchema } from './photo.ts';
import { pianoDescribedSchema } from './piano-described.ts';
import {
  pinLimitsSetSchema,
  pinPolicySetSchema,
  pinRemedySchema,
  pinsDrivenSchema,
  testPinSchema,
} from './pin-choice.ts';
import { platePartSchema } from './plate-part.ts';
import { readingSchema } from './reading.ts';
import { sampleKeptSchema } from './sample-kept.ts';
import { scaleChosenSchema, scaleProposedSchema } from './scale-proposed.ts';
import { sectionDescribedSchema } from './section-described.ts';
import {
  followUpDoneSchema,
  followUpPlannedSchema,
  overpullLimitSetSchema,
  passBegunSchema,
  passMishapSchema,
  passReadSchema,
} from './settling.ts';
import { sizeStampSchema } from './size-stamp.ts';
import { softPartSchema } from './soft-part.ts';
import {
  reservationReleasedSchema,
  stockCountedSchema,
  stockMinimumSetSchema,
  stockReceivedSchema,
  stockReservedSchema,
  stockUsedSchema,
} from './stock-moves.ts';
import { stringingMishapSchema, wireOnSchema } from './stringing.ts';
import { gapAcceptedSchema, sealedSchema } from './strip.ts';
import { unisonsDescribedSchema } from './unisons-described.ts';
import { windingDescribedSchema } from './winding-described.ts';
import { wirePathSchema } from './wire-path.ts';

/** Every kind of fact this program knows, one schema each. */
export const factSchema = z.discriminatedUnion('kind', [
  jobOpenedSchema,
  pianoDescribedSchema,
  sectionDescribedSchema,
  unisonsDescribedSchema,
  readingSchema,
  readingAbsentSchema,
  observationSchema,
  sizeStampSchema,
  windingDescribedSchema,
  wirePathSchema,
  softPartSchema,
  platePartSchema,
  photoSchema,
  sampleKeptSchema,
  instrumentDescribedSchema,
  gapAcceptedSchema,
  sealedSchema,
  damageFoundSchema,
  findingSchema,
  pinPolicySetSchema,
  pinLimitsSetSchema,
  testPinSchema,
  pinRemedySchema,
  pinsDrivenSchema,
  decisionMadeSchema,
  estimateMadeSchema,
  estimateAnsweredSchema,
  changeAnsweredSchema,
  hoursWorkedSchema,
  scaleProposedSchema,
  scaleChosenSchema,
  readingsImportedSchema,
  stockCountedSchema,
  stockReceivedSchema,
  stockUsedSchema,
  stockReservedSchema,
  reservationReleasedSchema,
  stockMinimumSetSchema,
  supplierDescribedSchema,
  priceListKeptSchema,
  allowanceSetSchema,
  orderDraftedSchema,
  orderMovedSchema,
  orderCheckSignedSchema,
  goodsReceivedSchema,
  wireOnSchema,
  stringingMishapSchema,
  passBegunSchema,
  passReadSchema,
  passMishapSchema,
  overpullLimitSetSchema,
  followUpPlannedSchema,
  followUpDoneSchema,
  handedOverSchema,
  withdrawnSchema,
]);

export type Fact = z.infer<typeof factSchema>;
export type FactOf<Kind extends Fact['kind']> = Extract<Fact, { kind: Kind }>;
export type Reading = FactOf<'reading'>;

/** Facts that make up the as-found record: what a seal fixes, and what needs a reason once it is sealed. */
export function isAsFoundFact(fact: { readonly kind: string }): boolean {
  switch (fact.kind) {
    case 'piano-described':
    case 'section-described':
    case 'unisons-described':
    case 'reading-absent':
    case 'observation':
    case 'finding':
    case 'size-stamp':
    case 'winding-described':
    case 'wire-path':
    case 'soft-part':
    case 'plate-part':
    case 'sample-kept':
    case 'readings-imported':
      return true;
    case 'reading':
      return (fact as Reading).stage === 'as found';
    case 'photo':
      return ((fact as FactOf<'photo'>).stage ?? 'as found') === 'as found';
    default:
      return false;
  }
}
