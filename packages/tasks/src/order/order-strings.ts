import { english, type Language, type Metres, metres, noteName } from '@becket/core';
import {
  type AsFoundNote,
  asFoundRecord,
  chosenScaleOf,
  type Figure,
  type Job,
  type ReadingQuantityName,
  type Ulid,
} from '@becket/journal';
import type { CutPolicy } from '../cut/cut-policy.ts';
import { wireEnds } from '../cut/wire-ends.ts';
import { fittedLengths } from '../fitted-lengths.ts';
import { inferredWireSizes } from '../infer-wire-sizes.ts';

/** Where a figure of an order comes from. */
export type OrderedFrom =
  | 'chosen scale'
  | 'size inferred'
  | 'as read'
  | 'line through the section'
  | 'line between its neighbours'
  | 'starting figure';

export interface OrderedLength {
  readonly value: Metres;
  readonly from: OrderedFrom;
}

/** One string to be strung, with all that its wire is counted from. Undefined is unknown. */
export interface OrderString {
  readonly key: number;
  readonly note: string;
  /** 1, 2 or 3, counted from the bass side. */
  readonly string: number;
  readonly section: string | undefined;
  readonly winding: 'plain' | 'wound';
  /** False where a scale is chosen that does not have the note: its size is that of the old wire all the same. */
  readonly isInScale: boolean;
  readonly diameter: OrderedLength | undefined;
  readonly front: OrderedLength;
  readonly speaking: OrderedLength | undefined;
  readonly back: OrderedLength;
  readonly hitchPin: OrderedLength;
  /** Entries that the figures come from. */
  readonly entries: readonly Ulid[];
}

export interface OrderStrings {
  /** Which scale is bought for, in words. */
  readonly scale: string;
  readonly isChosen: boolean;
  /** Why it should be looked at again before anything is bought; undefined while it holds. */
  readonly problem: string | undefined;
  /** Bass to treble, string 1 first. */
  readonly strings: readonly OrderString[];
  /** Notes whose stringing nobody described: nothing of them is counted. */
  readonly undescribed: readonly string[];
}

/**
 * The strings that wire is bought for: those of the chosen scale, and until one is chosen those of the scale as found.
 *
 * A plain string as found has the size that its readings speak for; where nothing tells a size, the diameter as read. An
 * end that was not read is taken from its neighbours, or else from the policy (`wireEnds`); a speaking length from the line
 * through its section. Each says so.
 */
export function orderStrings(job: Job, policy: CutPolicy, language: Language = english): OrderStrings {
  const { say } = language;
  const { notes } = asFoundRecord(job);
  const proposal = job.proposals.find(({ entry }) => entry === job.chosenScale?.scale);
  const chosen = new Map((proposal?.notes ?? []).map((note) => [note.key, note]));
  const inferred = new Map((inferredWireSizes(job)?.notes ?? []).map((note) => [note.key, note]));
  const fitted = new Map(
    fittedLengths(job).flatMap(({ notes: own }) =>
      own.map((note) => [note.key, note.fitted?.speakingLength]),
    ),
  );
  const endsOf = wireEnds(notes, policy);

  const diameterOf = (note: AsFoundNote): OrderedLength | undefined => {
    // What a proposal leaves as found has the readings for its sizes: the size behind them is what is bought.
    const own = chosen.get(note.key)?.from === 'as found' ? undefined : chosen.get(note.key);
    if (own?.winding === 'plain') return { value: metres(own.gauge_m), from: 'chosen scale' };
    if (own?.winding === 'wound') return { value: metres(own.core_m), from: 'chosen scale' };
    const size = inferred.get(note.key);
    if (size !== undefined) return { value: size.diameter, from: 'size inferred' };
    return asRead(note.figures[note.winding === 'wound' ? 'core-diameter' : 'wire-diameter']);
  };
  const strings = notes.flatMap((note): OrderString[] => {
    const winding = chosen.get(note.key)?.winding ?? note.winding;
    if (note.strings === undefined || winding === undefined) return [];
    const line = fitted.get(note.key);
    const speaking: OrderedLength | undefined =
      asRead(note.figures['speaking-length']) ??
      (line === undefined ? undefined : { value: line, from: 'line through the section' });
    const shared = {
      key: note.key,
      note: noteName(note.key),
      section: note.section?.section,
      winding,
      isInScale: proposal === undefined || chosen.has(note.key),
      diameter: diameterOf(note),
      ...endsOf(note),
      speaking,
      entries: entriesOf(note, proposal?.entry),
    };
    return Array.from({ length: note.strings }, (_, index) => ({ ...shared, string: index + 1 }));
  });
  return {
    scale:
      proposal !== undefined
        ? say("the chosen scale '{name}'", { name: proposal.name })
        : job.chosenScale !== undefined
          ? say('the scale as found, which was chosen')
          : say('the scale as found; no scale has been chosen yet'),
    isChosen: job.chosenScale !== undefined,
    problem: chosenScaleOf(job, language)?.changedSince,
    strings,
    undescribed: notes
      .filter(({ strings: count, winding }) => count === undefined || winding === undefined)
      .map(({ note }) => note),
  };
}

const asRead = (figure: Figure | undefined): OrderedLength | undefined =>
  figure === undefined || figure.value <= 0 ? undefined : { value: metres(figure.value), from: 'as read' };

const readForWire: readonly ReadingQuantityName[] = [
  'wire-diameter',
  'core-diameter',
  'speaking-length',
  'front-length',
  'back-length',
  'hitch-pin-diameter',
];

function entriesOf({ figures }: AsFoundNote, proposal: Ulid | undefined): Ulid[] {
  const read = readForWire.flatMap((quantity) => figures[quantity]?.readings.map(({ entry }) => entry) ?? []);
  return proposal === undefined ? read : [proposal, ...read];
}
