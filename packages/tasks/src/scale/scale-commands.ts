import { english, type Language, noteName } from '@becket/core';
import {
  type FactOf,
  type Job,
  type ProposedNote,
  proposedScaleNotes,
  scaleDigest,
  scaleNotesOf,
  type Ulid,
  type WhichScale,
} from '@becket/journal';
import { addFacts, readJob, type TaskContext } from '../context.ts';

/** A scale as somebody proposes it. */
export type ScaleToPropose = Pick<
  FactOf<'scale-proposed'>,
  'name' | 'notes' | 'weights' | 'limits' | 'strengthTable' | 'saidAgainst' | 'mostBetter'
>;

export interface ScaleOutcome {
  readonly job: Job;
  readonly entry: Ulid;
}

/**
 * Keeps a scale as a proposal of this job. Nothing is chosen by it.
 *
 * Throws: RangeError when the name is taken, or a note is not on this piano, lacks a length, or would leave nothing of its
 * speaking length wound. Nothing is stored then.
 */
export async function proposeScale(
  context: TaskContext,
  job: Ulid,
  scale: ScaleToPropose,
): Promise<ScaleOutcome> {
  const language = context.language ?? english;
  const { say } = language;
  const state = await readJob(context, job);
  const name = scale.name.trim();
  if (name === '')
    throw new RangeError(
      say('Cannot keep this proposal: a name is needed to find it by, none was given. Give it one.'),
    );
  const taken = [say('as found'), say('as strung')];
  if (['as found', 'as strung', ...taken, ...state.proposals.map((one) => one.name)].includes(name))
    throw new RangeError(
      say(
        'Cannot keep this proposal: a name that no other scale of this job has is needed, “{name}” was found. Give it another.',
        { name },
      ),
    );
  requireOnPiano(state, scale.notes, language);
  const { entries, job: changed } = await addFacts(context, job, [
    {
      kind: 'scale-proposed',
      v: 1,
      ...scale,
      name,
      notes: [...scale.notes].sort((a, b) => a.key - b.key),
      madeFrom: scaleDigest(state, scaleNotesOf(state, 'as found')),
    },
  ]);
  return { job: changed, entry: entries[0]!.id };
}

/**
 * Says which scale is strung, and why. The latest choice stands.
 *
 * Throws: RangeError when there is no such proposal or no reason. Nothing is stored then.
 */
export async function chooseScale(
  context: TaskContext,
  job: Ulid,
  { scale, reason }: { readonly scale: Exclude<WhichScale, 'as strung'>; readonly reason: string },
): Promise<ScaleOutcome> {
  const language = context.language ?? english;
  const state = await readJob(context, job);
  if (reason.trim() === '')
    throw new RangeError(
      language.say(
        'Cannot keep this choice: the reason is needed for whoever asks later, none was given. Say it in a few words.',
      ),
    );
  const digest = scaleDigest(state, scaleNotesOf(state, scale, language));
  const { entries, job: changed } = await addFacts(context, job, [
    { kind: 'scale-chosen', v: 1, scale, reason: reason.trim(), digest },
  ]);
  return { job: changed, entry: entries[0]!.id };
}

/** One sentence when readings have changed since a proposal was made; undefined while they are the same. */
export function staleSentence(
  job: Job,
  proposal: Job['proposals'][number],
  { say, day }: Language = english,
): string | undefined {
  return proposal.madeFrom === scaleDigest(job, scaleNotesOf(job, 'as found'))
    ? undefined
    : say(
        'Readings have changed since “{name}” was made on {day}: its figures follow them, but its sizes were not weighed again.',
        { name: proposal.name, day: day(proposal.at) },
      );
}

function requireOnPiano(state: Job, notes: readonly ProposedNote[], { say }: Language): void {
  for (const note of notes) {
    const { piano } = state;
    if (piano === undefined || note.key < piano.firstKey || note.key > piano.lastKey)
      throw new RangeError(
        say(
          'Cannot keep this proposal: a note of this piano is needed, {note} was found. Leave it out, or describe the piano first.',
          { note: noteName(note.key) },
        ),
      );
  }
  const scale = proposedScaleNotes(state, { name: '', notes });
  const lacking = notes.find(({ key }) => scale.notComputed.includes(key));
  if (lacking !== undefined)
    throw new RangeError(
      say(
        'Cannot keep this proposal: a speaking length and a stringing are needed for every note in it, {note} lacks one. Enter them in Record, or leave the note out.',
        { note: noteName(lacking.key) },
      ),
    );
  for (const { key, string } of scale.notes) {
    if (string.kind === 'plain') continue;
    for (const { bareFront, bareBack } of string.layers)
      if (bareFront + bareBack >= string.speakingLength)
        throw new RangeError(
          say(
            'Cannot keep this proposal: something of the speaking length must be wound, at {note} the bare ends take all of it. Shorten them.',
            { note: noteName(key) },
          ),
        );
  }
}
