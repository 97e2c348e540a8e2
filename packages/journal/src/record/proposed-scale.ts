import {
  english,
  type Language,
  type Metres,
  metres,
  type PlainString,
  type ScaleNote,
  type WoundString,
} from '@becket/core';
import { canonicalText, digestOf } from '../canonical.ts';
import type { ProposedNote } from '../facts/scale-proposed.ts';
import type { Job } from '../fold/job.ts';
import type { Ulid } from '../ulid.ts';
import { type AsFoundNote, asFoundRecord } from './as-found-record.ts';
import { bearingAtNote } from './bearing-at-note.ts';
import { hasSameWires } from './scale-comparison.ts';

/** Which scale of a job is meant; a proposal by its entry. */
export type WhichScale = 'as found' | 'as strung' | Ulid;

/** The notes of one scale that can be computed, and those that cannot. */
export interface ScaleNotes {
  /** What it is called: 'as found', or the name of the proposal. */
  readonly name: string;
  readonly notes: readonly ScaleNote[];
  /** Keys without a string or a length, bass to treble. */
  readonly notComputed: readonly number[];
}

/**
 * The notes of a scale of this job: as it was found, as it was strung, or as one proposal has it.
 *
 * A proposal takes lengths, stringing and pitch from the piano, with their uncertainties; only its sizes are its own. A note
 * that it does not name stays as it was found. *As strung* is what was measured on the new strings, and elsewhere as found.
 *
 * Throws: RangeError when there is no such proposal.
 */
export function scaleNotesOf(job: Job, which: WhichScale, { say }: Language = english): ScaleNotes {
  if (which === 'as found') return notesOfRecord('as found', job);
  if (which === 'as strung') return notesOfRecord('as strung', withNewReadings(job));
  const proposal = job.proposals.find(({ entry }) => entry === which);
  if (proposal === undefined) {
    throw new RangeError(
      say(
        'Cannot show this scale: a proposal of this job is needed, none of id {which} was found. It may have been withdrawn; choose another.',
        { which },
      ),
    );
  }
  return proposedScaleNotes(job, proposal);
}

/** The notes of a scale that is proposed, kept as a fact or not yet. */
export function proposedScaleNotes(
  job: Job,
  proposal: { readonly name: string; readonly notes: readonly ProposedNote[] },
): ScaleNotes {
  const { notes } = asFoundRecord(job);
  const sizes = new Map(proposal.notes.map((note) => [note.key, note]));
  const found = new Map(notesOfRecord('as found', job).notes.map((note) => [note.key, note]));
  const scale = notes.flatMap((note): ScaleNote[] => {
    const own = sizes.get(note.key);
    const asFound = found.get(note.key);
    if (own === undefined) return asFound === undefined ? [] : [asFound];
    if (asFound !== undefined && own.from === 'as found') {
      // Only where nothing has been read anew since: then what was read of the wire still speaks for it.
      const kept = proposedString(own, asFound.string.speakingLength);
      if (hasSameWires(kept, asFound.string)) return [asFound];
    }
    return withString(note, asFound, own);
  });
  const computed = new Set(scale.map(({ key }) => key));
  return {
    name: proposal.name,
    notes: scale,
    notComputed: notes.map(({ key }) => key).filter((key) => !computed.has(key)),
  };
}

/** The string of a proposed note on a speaking length. */
export function proposedString(note: ProposedNote, speakingLength: Metres): PlainString | WoundString {
  if (note.winding === 'plain') return { kind: 'plain', speakingLength, diameter: metres(note.gauge_m) };
  return {
    kind: 'wound',
    speakingLength,
    coreDiameter: metres(note.core_m),
    layers: note.layers.map(({ wire_m, bareFront_m, bareBack_m }) => ({
      wireDiameter: metres(wire_m),
      bareFront: metres(bareFront_m),
      bareBack: metres(bareBack_m),
    })),
  };
}

/** The sizes of a string as a proposal keeps them. */
export function asProposedNote(
  key: number,
  string: PlainString | WoundString,
  from: ProposedNote['from'],
): ProposedNote {
  if (string.kind === 'plain') return { winding: 'plain', key, gauge_m: string.diameter, from };
  return {
    winding: 'wound',
    key,
    core_m: string.coreDiameter,
    layers: string.layers.map(({ wireDiameter, bareFront, bareBack }) => ({
      wire_m: wireDiameter,
      bareFront_m: bareFront,
      bareBack_m: bareBack,
    })),
    from,
  };
}

/**
 * Digest of a scale: SHA-256 over the canonical JSON of its sizes, lengths, stringing and reference pitch.
 *
 * Lengths count to a tenth of a micrometre, so that no machine's last binary digit makes another scale of it. It goes on
 * orders: a scale that changed since has another.
 */
export function scaleDigest(job: Job, { notes }: Pick<ScaleNotes, 'notes'>): string {
  const rounded = (length: number) => Math.round(length * 1e7) / 1e7;
  return digestOf(
    canonicalText({
      referencePitch_hz: job.piano?.referencePitch_hz ?? null,
      notes: notes.map(({ key, strings, string }) => ({
        key,
        strings,
        speakingLength_m: rounded(string.speakingLength),
        ...(string.kind === 'plain'
          ? { plain_m: rounded(string.diameter) }
          : {
              core_m: rounded(string.coreDiameter),
              layers: string.layers.map(({ wireDiameter, bareFront, bareBack }) => ({
                wire_m: rounded(wireDiameter),
                bareFront_m: rounded(bareFront),
                bareBack_m: rounded(bareBack),
              })),
            }),
      })),
    }),
  );
}

/** The scale that was chosen to be strung, as it stands now. */
export interface ChosenScale {
  readonly which: Exclude<WhichScale, 'as strung'>;
  readonly name: string;
  readonly reason: string;
  readonly digest: string;
  /** One sentence for whoever orders from it: it is no longer what was chosen; undefined while it is. */
  readonly changedSince: string | undefined;
}

/** What was chosen, and whether it still is what it was; undefined until somebody has chosen. */
export function chosenScaleOf(job: Job, { say, day }: Language = english): ChosenScale | undefined {
  const { chosenScale } = job;
  if (chosenScale === undefined) return undefined;
  const { scale: which, reason, digest: chosenDigest, at } = chosenScale;
  const on = day(at);
  const isThere = which === 'as found' || job.proposals.some(({ entry }) => entry === which);
  if (!isThere) {
    return {
      which,
      name: say('a withdrawn proposal'),
      reason,
      digest: chosenDigest,
      changedSince: say(
        'The scale chosen on {on} has been withdrawn: choose again before anything is ordered from it.',
        { on },
      ),
    };
  }
  const scale = scaleNotesOf(job, which);
  const digest = scaleDigest(job, scale);
  const name = which === 'as found' ? say('as found') : scale.name;
  return {
    which,
    name,
    reason,
    digest,
    changedSince:
      digest === chosenDigest
        ? undefined
        : say(
            'The scale “{name}” has changed since it was chosen on {on}: a reading of it is another now. Look at it again and choose it again before ordering.',
            { name, on },
          ),
  };
}

function notesOfRecord(name: string, job: Job): ScaleNotes {
  const { notes, scaleNotes } = asFoundRecord(job);
  const computed = new Set(scaleNotes.map(({ key }) => key));
  const record = new Map(notes.map((note) => [note.key, note]));
  return {
    name,
    notes: scaleNotes.map((note) => withBearing(note, record.get(note.key))),
    notComputed: notes.map(({ key }) => key).filter((key) => !computed.has(key)),
  };
}

/** A note with the bearing that was read at it, as an angle or as a rise. */
function withBearing(note: ScaleNote, record: AsFoundNote | undefined): ScaleNote {
  if (record === undefined || note.bearingAngle !== undefined) return note;
  const bearing = bearingAtNote(record);
  if (bearing === undefined) return note;
  const { angle, standardUncertainty } = bearing;
  return {
    ...note,
    bearingAngle: angle,
    standardUncertainties: {
      ...note.standardUncertainties,
      ...(standardUncertainty ? { bearingAngle: standardUncertainty } : {}),
    },
  };
}

/** The job as if what was measured on the new strings were what was found. */
function withNewReadings(job: Job): Job {
  // A bearing that was read as an angle is replaced by one that is read as a rise, and the other way round.
  const name = ({ place, quantity }: Job['readings'][number]) =>
    `${place.key}/${quantity.startsWith('bearing-') ? 'bearing' : quantity}`;
  const strung = job.readings.filter(({ stage }) => stage === 'as strung');
  const again = new Set(strung.map(name));
  return {
    ...job,
    readings: [
      ...job.readings.filter((reading) => reading.stage === 'as found' && !again.has(name(reading))),
      ...strung.map((reading) => ({ ...reading, stage: 'as found' as const })),
    ],
  };
}

function withString(note: AsFoundNote, asFound: ScaleNote | undefined, own: ProposedNote): ScaleNote[] {
  const length = asFound?.string.speakingLength ?? note.figures['speaking-length']?.value;
  if (length === undefined || length <= 0 || note.strings === undefined) return [];
  const string = proposedString(own, metres(length));
  if (asFound === undefined) {
    const uncertainty = note.figures['speaking-length']?.standardUncertainty;
    return [
      {
        key: note.key,
        section: note.section?.section ?? 'no section',
        bridge: note.section?.bridge ?? 'unknown',
        strings: note.strings as 1 | 2 | 3,
        frequency: note.frequency,
        string,
        ...(uncertainty ? { standardUncertainties: { speakingLength: metres(uncertainty) } } : {}),
      },
    ];
  }
  // New wire is as uncertain as the shop takes new wire to be; what was read of the old one says nothing about it.
  const { wireDiameter: _, layers: __, ...ofTheNote } = asFound.standardUncertainties ?? {};
  const { individualStrings: ___, ...rest } = asFound;
  return [{ ...rest, string, standardUncertainties: ofTheNote }];
}
