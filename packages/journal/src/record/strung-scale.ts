import { type Metres, metres, type ScaleNote } from '@becket/core';
import type { Job } from '../fold/job.ts';
import { chosenScaleOf, scaleNotesOf } from './proposed-scale.ts';

/** What is known of the strings that are on a piano now, note by note. */
export interface StrungNote {
  readonly key: number;
  readonly note: ScaleNote;
  /** Measured on the new wire; or else by the scale that was chosen, or as it was found while none is. */
  readonly from: 'measured' | 'chosen' | 'as found';
}

export interface StrungScale {
  /** Bass to treble. */
  readonly notes: readonly StrungNote[];
  /** Keys whose string cannot be computed from any of them. */
  readonly notComputed: readonly number[];
  /** Name of the scale that was chosen; undefined while none is. */
  readonly chosen: string | undefined;
}

/**
 * The scale that is on the piano: each note as it was measured on its new wire, elsewhere as it was chosen.
 *
 * A note counts as measured once the wire that carries its tension was: of a plain string its diameter, of a wound one its
 * core and its diameter over all.
 */
export function strungScale(job: Job): StrungScale {
  const chosen = chosenScaleOf(job);
  const isThere = chosen === undefined || chosen.which === 'as found' || isProposal(job, chosen.which);
  const base = scaleNotesOf(job, chosen === undefined || !isThere ? 'as found' : chosen.which);
  const measured = measuredWires(job);
  const strung = measured.size === 0 ? [] : scaleNotesOf(job, 'as strung').notes;
  const notes = new Map<number, StrungNote>();
  const otherwise = chosen === undefined || !isThere ? 'as found' : 'chosen';
  for (const note of base.notes) notes.set(note.key, { key: note.key, note, from: otherwise });
  for (const note of strung)
    if (isMeasured(note, measured)) notes.set(note.key, { key: note.key, note, from: 'measured' });
  return {
    notes: [...notes.values()].sort((a, b) => a.key - b.key),
    notComputed: base.notComputed.filter((key) => !notes.has(key)),
    chosen: chosen === undefined || !isThere ? undefined : chosen.name,
  };
}

/** One size that was measured on the new wire and is not the one that was chosen. */
export interface StrungDeviation {
  readonly key: number;
  readonly quantity: 'wire' | 'core' | 'over all' | 'speaking length';
  readonly chosen: Metres;
  readonly measured: Metres;
}

/** How far a size may lie off the chosen one before it is named. Common practice, no source. */
export const STRUNG_TOLERANCES: Readonly<Record<StrungDeviation['quantity'], Metres>> = {
  wire: metres(0.00001),
  core: metres(0.00001),
  'over all': metres(0.00005),
  'speaking length': metres(0.003),
};

/**
 * Where the strings that are on are not those that were chosen, by what was measured on them; none while no scale is chosen.
 * A note of which no new wire was measured is not compared.
 *
 * @param wanted  the plain wire that was to be strung, by key; what was read of the worn wire is no size that was chosen
 */
export function strungDeviations(
  job: Job,
  scale: StrungScale,
  wanted: ReadonlyMap<number, Metres>,
): StrungDeviation[] {
  const chosen = chosenScaleOf(job);
  if (chosen === undefined || scale.chosen === undefined) return [];
  const notes = new Map(scaleNotesOf(job, chosen.which).notes.map((note) => [note.key, note]));
  return scale.notes.flatMap(({ key, note, from }): StrungDeviation[] => {
    const own = notes.get(key);
    if (from !== 'measured' || own === undefined) return [];
    const sizes = sizesOf(note);
    const chosenSizes = sizesOf(own);
    return (Object.keys(sizes) as StrungDeviation['quantity'][]).flatMap((quantity) => {
      const is = sizes[quantity];
      const was = quantity === 'wire' ? wanted.get(key) : chosenSizes[quantity];
      // A hair of rounding is no difference.
      const isWithin =
        is === undefined || was === undefined || Math.abs(is - was) <= STRUNG_TOLERANCES[quantity] + 1e-9;
      return isWithin ? [] : [{ key, quantity, chosen: was, measured: is }];
    });
  });
}

const isProposal = (job: Job, which: string): boolean => job.proposals.some(({ entry }) => entry === which);

/** Which wire of which key was measured on the new strings. */
function measuredWires(job: Job): Set<string> {
  return new Set(
    job.readings
      .filter(({ stage, place }) => stage === 'as strung' && place.key !== undefined)
      .map(({ place, quantity }) => `${place.key}/${quantity}`),
  );
}

function isMeasured({ key, string }: ScaleNote, measured: ReadonlySet<string>): boolean {
  return string.kind === 'plain'
    ? measured.has(`${key}/wire-diameter`)
    : measured.has(`${key}/core-diameter`) && measured.has(`${key}/over-all-diameter`);
}

function sizesOf({ string }: ScaleNote): Partial<Record<StrungDeviation['quantity'], Metres>> {
  const { speakingLength } = string;
  if (string.kind === 'plain') return { wire: string.diameter, 'speaking length': speakingLength };
  const overAll = string.layers.reduce(
    (sum, { wireDiameter }) => sum + 2 * wireDiameter,
    string.coreDiameter as number,
  );
  return { core: string.coreDiameter, 'over all': metres(overAll), 'speaking length': speakingLength };
}
