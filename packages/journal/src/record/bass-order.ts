import { english, type Language, type ScaleNote, type SentenceUnit } from '@becket/core';
import { canonicalText, digestOf } from '../canonical.ts';
import type { Orders } from '../fold/fold-orders.ts';
import type { Job } from '../fold/job.ts';
import { asFoundRecord } from './as-found-record.ts';
import { type BassCheck, checksOf } from './bass-checks.ts';
import { type BassAllowances, type BassString, bassString, STARTING_BASS_ALLOWANCES } from './bass-string.ts';
import { chosenScaleOf, scaleNotesOf } from './proposed-scale.ts';

export interface BassOrder {
  /** Which scale it is made from, in words. */
  readonly scale: string;
  /** Why that scale should be looked at again before anything is sent; undefined while it holds. */
  readonly scaleProblem: string | undefined;
  /** Bass to treble, string 1 first. */
  readonly strings: readonly BassString[];
  /** The notes of these strings as they can be computed, by key; without those that cannot be yet. */
  readonly scaleNotes: ReadonlyMap<number, ScaleNote>;
  /** Every check that does not pass, signed or not. */
  readonly checks: readonly BassCheck[];
  /** True when there is a string to order and somebody answers for each check that does not pass. */
  readonly mayBeSent: boolean;
  /** SHA-256 over the canonical JSON of the strings, hexadecimal: another figure is another digest. */
  readonly digest: string;
  readonly allowances: BassAllowances;
}

/**
 * The wound strings to be made for this piano, string by string, with the checks that stand between them and an order.
 *
 * Core and windings are those of the chosen scale, and until one is chosen those as found. A reading of one string of a note
 * speaks for that string; a reading of the note for all that have none of their own.
 */
export function bassOrder(
  job: Job,
  {
    signed = [],
    allowances = STARTING_BASS_ALLOWANCES,
    lengthUnit = 'mm',
  }: {
    readonly signed?: Orders['signed'];
    readonly allowances?: BassAllowances;
    readonly lengthUnit?: SentenceUnit;
  } = {},
  language: Language = english,
): BassOrder {
  const { say } = language;
  const chosen = chosenScaleOf(job, language);
  const isThere =
    chosen !== undefined &&
    (chosen.which === 'as found' || job.proposals.some(({ entry }) => entry === chosen.which));
  const which = isThere ? chosen.which : 'as found';
  const scaleNotes = new Map(scaleNotesOf(job, which).notes.map((note) => [note.key, note]));
  const proposed = new Map(
    (job.proposals.find(({ entry }) => entry === which)?.notes ?? []).map((note) => [note.key, note]),
  );
  const notes = asFoundRecord(job).notes.filter(
    ({ key, winding }) => (proposed.get(key)?.winding ?? winding) === 'wound',
  );
  const strings = notes.flatMap((note) =>
    Array.from({ length: note.strings ?? 1 }, (_, index) =>
      bassString(job, note, index + 1, {
        scaleNote: proposed.get(note.key)?.from === 'as found' ? undefined : scaleNotes.get(note.key),
        isProposed: proposed.has(note.key) && proposed.get(note.key)?.from !== 'as found',
        proposal: which === 'as found' ? undefined : which,
        allowances,
      }),
    ),
  );
  const checksIn = (unit: SentenceUnit, of: Language) =>
    checksOf(notes, strings, scaleNotes, allowances, unit, of);
  const asKept = checksIn('mm', english);
  const isAsKept = lengthUnit === 'mm' && language === english;
  const checks = (isAsKept ? asKept : checksIn(lengthUnit, language)).map((check, index) => {
    const signs = asKept[index]!.sentence;
    const signature = signed.find((one) => one.check === check.id && one.sentence === signs);
    return {
      ...check,
      signs,
      signed:
        signature === undefined
          ? undefined
          : { name: signature.name, reason: signature.reason, at: signature.at },
    };
  });
  return {
    scale:
      chosen === undefined
        ? say('the scale as found; no scale has been chosen yet')
        : which === 'as found'
          ? say('the scale as found, which was chosen')
          : say('the chosen scale “{name}”', { name: chosen.name }),
    scaleProblem: chosen?.changedSince,
    strings,
    scaleNotes,
    checks,
    mayBeSent: strings.length > 0 && checks.every((check) => check.signed !== undefined),
    digest: bassOrderDigest(strings),
    allowances,
  };
}

/** One sentence when the strings are no longer those that an order was drafted from; undefined while they are. */
export function changedSinceOrder(
  { digest }: BassOrder,
  order: { readonly scaleDigest: string | undefined; readonly draftedAt: string; readonly supplier: string },
  { say, day }: Language = english,
): string | undefined {
  if (order.scaleDigest === undefined || order.scaleDigest === digest) return undefined;
  return say(
    'The strings have changed since the order to {supplier} was drafted on {on}: a reading, a size, an allowance or the chosen scale is another now. Compare the paper that was sent with this one, and tell the maker.',
    { supplier: order.supplier, on: day(order.draftedAt) },
  );
}

function bassOrderDigest(strings: readonly BassString[]): string {
  return digestOf(
    canonicalText(
      strings.map(({ key, string, layers, stated, loopStyle, twist }) => ({
        key,
        string,
        layers,
        loopStyle,
        twist,
        // To a tenth of a micrometre: what the last binary digit says is no other string.
        lengths_m: Object.fromEntries(
          Object.entries(stated).map(([name, one]) => [
            name,
            one.is === 'length' ? Math.round(one.value * 1e7) / 1e7 : one.why,
          ]),
        ),
      })),
    ),
  );
}
