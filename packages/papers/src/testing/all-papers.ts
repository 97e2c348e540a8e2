import { cutLength, millimetres } from '@becket/core';
import { asProposedNote, foldJob, type Job, scaleNotesOf } from '@becket/journal';
import { appraisalAnnexPaper } from '../appraisal-annex/appraisal-annex-paper.ts';
import { appraisalReportPaper } from '../appraisal-report/appraisal-report-paper.ts';
import { asFoundRecordPaper } from '../as-found-record/as-found-record-paper.ts';
import { bassStringOrderPaper } from '../bass-string-order/bass-string-order-paper.ts';
import { bassStringPlanPaper } from '../bass-string-plan/bass-string-plan-paper.ts';
import { changeOrderPaper } from '../change-order/change-order-paper.ts';
import { cutListPaper } from '../cut-list/cut-list-paper.ts';
import { estimatePaper } from '../estimate/estimate-paper.ts';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { handOverRecordPaper } from '../hand-over-record/hand-over-record-paper.ts';
import type { PageTree } from '../page-tree.ts';
import type { PurchaseFigures } from '../purchase-list/purchase-figures.ts';
import { purchaseListPaper } from '../purchase-list/purchase-list-paper.ts';
import { scaleComparisonPaper } from '../scale-comparison/scale-comparison-paper.ts';
import { settlingLogPaper } from '../settling-log/settling-log-paper.ts';
import type { StringingFigures } from '../stringing-sheets/stringing-figures.ts';
import { stringingSheetsPaper } from '../stringing-sheets/stringing-sheets-paper.ts';
import { appraisalFigures } from './appraisal-figures.ts';
import { appraisedJob } from './appraised-job.ts';
import { changedJob } from './changed-job.ts';
import { handOverTestFigures, settledFigures, settledJob } from './settled-job.ts';
import { smallJob, smallJournal } from './small-job.ts';
import { wholeCompassJob } from './whole-compass-job.ts';

/** The paper of every kind, as full as an invented job makes it, with the data it was made of. */
export function allPapers(options: PaperOptions): { tree: PageTree; data: readonly unknown[] }[] {
  const unchecked = { ...options, isSealIntact: undefined };
  const [small, sealed] = [smallJob(), smallJob({ sealed: true })];
  const [open, accepted, none] = [
    appraisedJob(),
    appraisedJob({ estimate: 'accepted' }),
    appraisedJob({ estimate: 'none', isEmpty: true }),
  ];
  const contradicting = contradictingJob();
  const changes = [changedJob(), changedJob({ isAnswered: true })];
  const scale = proposedJob();
  const settled = settledJob();
  const [figures, log, record] = [appraisalFigures(), settledFigures(), handOverTestFigures()];
  return [
    { tree: appraisalReportPaper(open, unchecked, figures), data: [open, figures] },
    { tree: appraisalReportPaper(none, unchecked), data: [none] },
    { tree: appraisalAnnexPaper(open, unchecked, figures), data: [open, figures] },
    { tree: appraisalAnnexPaper(none, unchecked), data: [none] },
    ...[open, accepted, appraisedJob({ estimate: 'made anew' }), none].map((job) => ({
      tree: estimatePaper(job, unchecked),
      data: [job],
    })),
    ...changes.map((job) => ({ tree: changeOrderPaper(job, options), data: [job] })),
    { tree: asFoundRecordPaper(small, unchecked), data: [small] },
    { tree: asFoundRecordPaper(sealed, { ...options, isSealIntact: false }), data: [sealed] },
    { tree: asFoundRecordPaper(contradicting, unchecked), data: [contradicting] },
    { tree: bassStringOrderPaper(sealed, options), data: [sealed] },
    { tree: bassStringOrderPaper(contradicting, unchecked), data: [contradicting] },
    { tree: bassStringPlanPaper(sealed, options), data: [sealed] },
    { tree: purchaseListPaper(small, options, purchase), data: [small, purchase] },
    { tree: scaleComparisonPaper(scale, options), data: [scale] },
    { tree: scaleComparisonPaper(small, options), data: [small] },
    { tree: stringingSheetsPaper(small, options, stringing), data: [small, stringing] },
    { tree: cutListPaper(small, options, stringing), data: [small, stringing] },
    { tree: settlingLogPaper(settled, options, log), data: [settled, log] },
    { tree: handOverRecordPaper(settled, options, record), data: [settled, record] },
  ];
}

/** The small job with a wound string that is thinner over all than its core. */
function contradictingJob(): Job {
  const journal = smallJournal();
  const last = journal.at(-1)!;
  const fact = {
    kind: 'reading',
    v: 1,
    quantity: 'over-all-diameter',
    place: { key: 25 },
    value_si: 0.0009,
    asRead: { value: 0.9, unit: 'mm' },
    origin: 'measured',
    stage: 'as found',
  } as const;
  return foldJob([...journal, { ...last, id: '01HF7YATFSGGGGGGGGGGGGGGG1', step: last.step + 1, fact }]);
}

/** The whole compass with thinner wire proposed for four notes. */
function proposedJob(): Job {
  const job = wholeCompassJob();
  const notes = scaleNotesOf(job, 'as found').notes.map(({ key, string }) =>
    string.kind === 'plain' && key >= 49 && key <= 52
      ? { ...asProposedNote(key, string, 'by hand'), gauge_m: string.diameter - 5e-5 }
      : asProposedNote(key, string, 'as found'),
  );
  const made = {
    entry: '01HF7YATFSGGGGGGGGGGGGGGG0',
    step: 9000,
    at: '2026-03-09T10:00:00Z',
    by: 'Ada',
    kind: 'scale-proposed',
    v: 1,
    name: 'lighter middle',
    madeFrom: 'a'.repeat(64),
  } as const;
  return { ...job, proposals: [{ ...made, notes }] };
}

const strings = [
  { key: 49, note: 'A4', string: 1, section: 'treble' },
  { key: 49, note: 'A4', string: 2, section: 'treble' },
] as const;

const stringing: StringingFigures = {
  scale: 'invented scale',
  wires: [strings, strings.slice(0, 1)].map((own) => ({
    joined: own.length === 2 ? 'looped' : 'tied',
    strings: own,
    diameter: millimetres(1),
    size: 'invented size',
    cut: cutLength({
      wireDiameter: millimetres(1),
      pinDiameter: millimetres(7),
      hitchPinDiameter: millimetres(4),
      coils: 3,
      becket: millimetres(6),
      waste: millimetres(20),
      tie: millimetres(70),
      strings: own.map(() => ({
        front: millimetres(120),
        back: millimetres(100),
        speaking: millimetres(400),
      })),
    }),
    remarks: ['invented remark'],
  })),
  wound: [{ key: 1, note: 'A0', string: 1, section: 'bass' }],
  uncounted: [{ ...strings[0], needs: 'invented need' }],
  undescribed: ['C8'],
  allowances: 'Invented allowances.',
};

const need = {
  what: 'invented glue',
  needed: '1 tube',
  onHand: 'no tube',
  toBuy: 'one tube',
  because: 'invented list',
};

const purchase: PurchaseFigures = {
  scale: 'invented scale',
  isChosenScale: false,
  scaleProblem: undefined,
  neededOn: '2026-04-01',
  suppliers: [
    {
      supplier: 'Invented Wire',
      currency: 'EUR',
      total: '29.00',
      orderBy: '2026-03-22',
      rows: [
        {
          what: 'invented wire',
          article: 'A-18',
          needed: '63 g',
          covered: '40 g on a shelf',
          packs: 2,
          pack: 'coil of 500 g',
          price: '14.50',
          total: '29.00',
          orderBy: '2026-03-22',
          remark: 'invented remark',
          machine: {
            item: 'wire',
            unit: 'g',
            needed: 63,
            toBuy: 23,
            packHolds: 500,
            price: '14.50',
            total: '29.00',
          },
        },
      ],
    },
  ],
  notListed: [need],
  covered: [need],
  unknown: [need],
  bySize: [need],
  notCounted: ['Invented string not counted.'],
  allowances: ['Invented allowance.'],
  orders: ['Invented order.'],
};
