import { english, type Language, message, noteName } from '@becket/core';
import type { Fact, FactOf, Job, StringPlace, Ulid } from '@becket/journal';
import { addFacts, RecordIsSealed, readJob, type TaskContext } from './context.ts';
import { requireDescribedString, requireNoteOnPiano, requireSectionOnPiano } from './on-this-piano.ts';

/** Kinds of as-found facts that are seen and said rather than read off a gauge. */
export type SaidKind =
  | 'size-stamp'
  | 'winding-described'
  | 'wire-path'
  | 'soft-part'
  | 'plate-part'
  | 'sample-kept';

type WithoutVersion<F> = F extends Fact ? Omit<F, 'v'> : never;
/** A fact as a screen or a script gives it. */
export type FactToRecord = WithoutVersion<FactOf<SaidKind>>;

/**
 * Records stamps, windings, wires, soft parts, plate parts and samples of the piano as found, all or none.
 *
 * Throws: RangeError when a note, a string or a section is not on this piano as it is described, or when a winding is
 * told of a plain string; RecordIsSealed when the record is sealed and a fact has no reason. Nothing is stored then.
 */
export async function recordFacts(
  context: TaskContext,
  job: Ulid,
  facts: readonly FactToRecord[],
): Promise<{ job: Job; entries: readonly Ulid[] }> {
  const state = await readJob(context, job);
  for (const fact of facts) requireOnPiano(state, fact, context.language ?? english);
  if (state.seal !== undefined && facts.some((fact) => (fact.reason ?? '').trim() === ''))
    throw new RecordIsSealed(state.seal.at, context.language);
  const { entries, job: changed } = await addFacts(
    context,
    job,
    facts.map((fact): Fact => ({ ...fact, v: 1 })),
  );
  return { job: changed, entries: entries.map(({ id }) => id) };
}

const spokenKinds = {
  'size-stamp': message('this stamp'),
  'winding-described': message('this winding'),
  'wire-path': message('this wire'),
  'soft-part': message('this part'),
  'plate-part': message('this part'),
  'sample-kept': message('this sample'),
} as const satisfies Record<SaidKind, string>;

function requireOnPiano(state: Job, fact: FactToRecord, language: Language): void {
  const what = language.say(spokenKinds[fact.kind]);
  switch (fact.kind) {
    case 'size-stamp':
      requireNoteOnPiano(state, { key: fact.key, what }, language);
      break;
    case 'winding-described':
      requireNoteOnPiano(state, { key: fact.key, what }, language);
      if (fact.string !== undefined)
        requireDescribedString(state, { key: fact.key, string: fact.string, what }, language);
      if (state.unisons.get(fact.key)?.winding === 'plain')
        throw new RangeError(
          language.say(
            'Cannot keep {what}: a note with wound strings is needed, {note} is described as plain. Choose another note, or correct its stringing.',
            { what, note: noteName(fact.key) },
          ),
        );
      break;
    case 'wire-path':
      for (const string of fact.strings) requireDescribedString(state, { ...string, what }, language);
      requireTwoStrings(fact.strings, language);
      break;
    case 'soft-part':
    case 'plate-part':
      requireSectionOnPiano(state, { section: fact.section, what }, language);
      break;
    case 'sample-kept': {
      const { key, string, section } = fact.place;
      if (key !== undefined) requireNoteOnPiano(state, { key, what }, language);
      if (key !== undefined && string !== undefined)
        requireDescribedString(state, { key, string, what }, language);
      if (section !== undefined) requireSectionOnPiano(state, { section, what }, language);
      break;
    }
  }
}

function requireTwoStrings(strings: readonly StringPlace[], { say }: Language): void {
  const [one, other] = strings;
  if (one === undefined || other === undefined) return;
  if (one.key === other.key && one.string === other.string)
    throw new RangeError(
      say(
        'Cannot keep this wire: two different strings are needed, {note} string {string} was found twice. Choose its other string, or say that it is tied.',
        { note: noteName(one.key), string: one.string },
      ),
    );
}
