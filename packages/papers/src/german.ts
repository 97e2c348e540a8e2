import type { Catalogue } from '@becket/core';
import { german as appraisalAnnex } from './appraisal-annex/german.ts';
import { german as appraisalReport } from './appraisal-report/german.ts';
import { german as asFoundRecord } from './as-found-record/german.ts';
import { german as bassStringOrder } from './bass-string-order/german.ts';
import { german as bassStringPlan } from './bass-string-plan/german.ts';
import { german as changeOrder } from './change-order/german.ts';
import { german as cutList } from './cut-list/german.ts';
import { german as estimate } from './estimate/german.ts';
import { german as everyPaper } from './every-paper/german.ts';
import { german as figures } from './figures/german.ts';
import { german as handOverRecord } from './hand-over-record/german.ts';
import { german as purchaseList } from './purchase-list/german.ts';
import { german as scaleComparison } from './scale-comparison/german.ts';
import { german as settlingLog } from './settling-log/german.ts';
import { german as stringingSheets } from './stringing-sheets/german.ts';

/** All messages of this package in German. */
export const german: Catalogue = {
  ...appraisalAnnex,
  ...appraisalReport,
  ...asFoundRecord,
  ...bassStringOrder,
  ...bassStringPlan,
  ...changeOrder,
  ...cutList,
  ...estimate,
  ...everyPaper,
  ...figures,
  ...handOverRecord,
  ...purchaseList,
  ...scaleComparison,
  ...settlingLog,
  ...stringingSheets,
};
