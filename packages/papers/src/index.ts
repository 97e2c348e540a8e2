// Papers as plain data
export type { LengthUnit } from '@becket/core';
export { appraisalAnnexPaper } from './appraisal-annex/appraisal-annex-paper.ts';
export type { AppraisalFigures } from './appraisal-report/appraisal-figures.ts';
export { appraisalReportPaper } from './appraisal-report/appraisal-report-paper.ts';
export { asFoundRecordPaper } from './as-found-record/as-found-record-paper.ts';
export { bassStringOrderPaper } from './bass-string-order/bass-string-order-paper.ts';
export { bassStringPlanPaper } from './bass-string-plan/bass-string-plan-paper.ts';
export { changeOrderPaper } from './change-order/change-order-paper.ts';
export { type ChangeOrderTotals, changeOrderTotals } from './change-order/change-totals.ts';
export { cutListPaper } from './cut-list/cut-list-paper.ts';
export { estimatePaper } from './estimate/estimate-paper.ts';
export type { PaperOptions } from './every-paper/paper-options.ts';
export { placeInWords } from './every-paper/place-in-words.ts';
export type {
  BearingSection,
  BearingSpread,
  FinalPitch,
  HandOverFigures,
} from './hand-over-record/hand-over-figures.ts';
export { commonCautions, handOverRecordPaper } from './hand-over-record/hand-over-record-paper.ts';
export type {
  Block,
  Cell,
  Chart,
  MachineTable,
  PageTree,
  PaperSize,
  Table,
  TableColumn,
  TableRow,
} from './page-tree.ts';
export type { NeedRow, PurchaseFigures, PurchaseRow } from './purchase-list/purchase-figures.ts';
export { purchaseListPaper } from './purchase-list/purchase-list-paper.ts';
// From a tree to CSV; PDF is behind '@becket/papers/pdf'
export { renderCsv } from './render/csv.ts';
export { scaleComparisonPaper } from './scale-comparison/scale-comparison-paper.ts';
export type { SettlingFigures } from './settling-log/settling-figures.ts';
export { raisingCautions, settlingLogPaper } from './settling-log/settling-log-paper.ts';
export type { StringingFigures, StringingString } from './stringing-sheets/stringing-figures.ts';
export { stringingSheetsPaper } from './stringing-sheets/stringing-sheets-paper.ts';
