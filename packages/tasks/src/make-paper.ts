import { english, type Language } from '@becket/core';
import { type Entry, foldJob, foldOrders, isSealIntact, type Job, type Ulid } from '@becket/journal';
import {
  appraisalAnnexPaper,
  appraisalReportPaper,
  asFoundRecordPaper,
  bassStringOrderPaper,
  bassStringPlanPaper,
  changeOrderPaper,
  cutListPaper,
  estimatePaper,
  handOverRecordPaper,
  type LengthUnit,
  type PageTree,
  type PaperOptions,
  type PaperSize,
  purchaseListPaper,
  renderCsv,
  scaleComparisonPaper,
  settlingLogPaper,
  stringingSheetsPaper,
} from '@becket/papers';
import type { PaperMeans } from '@becket/papers/pdf';
import { type BlobStore, StoreUnavailable } from '@becket/store';
import { appraisalFigures } from './appraise/appraisal-figures.ts';
import { entriesOf, type TaskContext } from './context.ts';
import { paperFileName } from './file-name.ts';
import { handOverFigures } from './hand-over/hand-over-figures.ts';
import { bassAllowancesOf, orderPolicyOf } from './order/allowances.ts';
import { purchaseFigures } from './order/purchase-figures.ts';
import { readShop, type Shop } from './order/shop.ts';
import { stringingFigures } from './order/stringing-figures.ts';
import { settlingFigures } from './settle/settling-figures.ts';

export type { PaperMeans } from '@becket/papers/pdf';

/** What the makers of papers are handed: what every paper needs, and the shop's stock and suppliers. */
interface MakingOptions extends PaperOptions {
  readonly shop: Shop;
  /** The journal itself: for papers of what is folded apart from the job. */
  readonly entries: readonly Entry[];
}

const makers = {
  'appraisal-report': (job, options) =>
    appraisalReportPaper(job, options, appraisalFigures(job, options.language)),
  'appraisal-annex': (job, options) =>
    appraisalAnnexPaper(job, options, appraisalFigures(job, options.language)),
  estimate: estimatePaper,
  'as-found-record': asFoundRecordPaper,
  'scale-comparison': scaleComparisonPaper,
  'bass-string-order': (job, options) =>
    bassStringOrderPaper(job, options, bassAllowancesOf(options.shop.allowances)),
  'bass-string-plan': (job, options) =>
    bassStringPlanPaper(job, options, bassAllowancesOf(options.shop.allowances)),
  'purchase-list': (job, options) =>
    purchaseListPaper(job, options, purchaseFigures(job, options, options.language)),
  'change-order': changeOrderPaper,
  'stringing-sheets': (job, options) =>
    stringingSheetsPaper(
      job,
      options,
      stringingFigures(job, orderPolicyOf(options.shop.allowances), options.language),
    ),
  'cut-list': (job, options) =>
    cutListPaper(
      job,
      options,
      stringingFigures(job, orderPolicyOf(options.shop.allowances), options.language),
    ),
  'settling-log': (job, options) =>
    settlingLogPaper(job, options, settlingFigures(job, onDay(options), options.language)),
  'hand-over-record': (job, options) =>
    handOverRecordPaper(job, options, handOverFigures(job, onDay(options), options.language)),
} as const satisfies Record<string, (job: Job, options: MakingOptions) => PageTree>;

const onDay = ({ entries, at }: MakingOptions) => ({ entries, today: at.slice(0, 10) });

/** Every paper by the name it is asked for. */
export type PaperName = keyof typeof makers;
export const paperNames = Object.keys(makers) as [PaperName, ...PaperName[]];
export const paperSizes = ['A4', 'Letter'] as const satisfies readonly PaperSize[];
export const paperFormats = ['pdf', 'csv'] as const;
export type PaperFormat = (typeof paperFormats)[number];

export interface PaperToMake {
  readonly paper: PaperName;
  readonly format?: PaperFormat | undefined;
  readonly size?: PaperSize | undefined;
  /** The unit of length that stands first on the paper; the other stands beside it. */
  readonly units?: LengthUnit | undefined;
  /** Where the job is found again; printed, and as a code to scan. */
  readonly address?: string | undefined;
  /** Fonts, and photos made smaller; on Node they are found by themselves, a browser brings its own. */
  readonly means?: PaperMeans | undefined;
}

/** A finished paper, ready to be kept, sent or printed. */
export interface MadePaper {
  readonly fileName: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}

/**
 * Makes a paper of a job: a PDF, or its table for machines as CSV.
 * Throws: JobNotFound; RangeError when the paper, the size or the format is not one we have.
 */
export async function makePaper(
  context: TaskContext,
  job: Ulid,
  { paper, format = 'pdf', size = 'A4', units = 'mm', address, means }: PaperToMake,
): Promise<MadePaper> {
  const language = context.language ?? english;
  const { say } = language;
  requireOneOf(paper, { allowed: paperNames, what: say('paper') }, language);
  requireOneOf(format, { allowed: paperFormats, what: say('format') }, language);
  requireOneOf(size, { allowed: paperSizes, what: say('paper size') }, language);
  const entries = await entriesOf(context, job);
  const state = foldJob(entries);
  const madeAt = context.now();
  const tree = makers[paper](state, {
    at: madeAt.toISOString(),
    // Figures that come in words already stand in the table for machines as well, and that is the same everywhere.
    language: format === 'csv' ? english : language,
    firstUnit: units,
    address,
    isSealIntact: state.seal === undefined ? undefined : isSealIntact(state.seal, entries),
    orders: foldOrders(entries),
    shop: await readShop(context),
    entries,
  });
  const fileName = paperFileName(state.title, { paper, format, language });
  if (format === 'csv') {
    return {
      fileName,
      mediaType: 'text/csv; charset=utf-8',
      bytes: new TextEncoder().encode(renderCsv(tree)),
    };
  }
  // Only now, so that a page which makes no paper never loads the type-setting.
  const { photosOf, printSized, renderPdf } = await import('@becket/papers/pdf');
  const { fonts, smallerJpeg } = means ?? (await import('@becket/papers/means')).meansHere;
  const photos = new Map<string, Uint8Array>();
  for (const digest of photosOf(tree)) {
    const kept = await photoFrom(context.store.blobs, digest);
    if (kept !== undefined) photos.set(digest, await printSized(kept, smallerJpeg));
  }
  const bytes = await renderPdf(tree, {
    size,
    madeAt,
    fonts: await fonts(),
    photos: (digest) => photos.get(digest),
  });
  return { fileName, mediaType: 'application/pdf', bytes };
}

/** A photo that is missing or damaged is said on the paper; the rest of it is made. */
async function photoFrom(blobs: BlobStore, digest: string): Promise<Uint8Array | undefined> {
  try {
    return await blobs.get(digest);
  } catch (error) {
    if (error instanceof StoreUnavailable && error.problem === 'damaged') return undefined;
    throw error;
  }
}

function requireOneOf(
  value: string,
  { allowed, what }: { readonly allowed: readonly string[]; readonly what: string },
  { say }: Language,
): void {
  if (allowed.includes(value)) return;
  throw new RangeError(
    say("Cannot make this paper: a {what} of {names} is needed, '{found}' was found.", {
      what,
      names: allowed.join(', '),
      found: value,
    }),
  );
}
