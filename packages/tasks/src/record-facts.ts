import { noteName } from '@becket/core';
import type { Fact, FactOf, Job, StringPlace, Ulid } from '@becket/journal';
import { addFacts, RecordIsSealed, readJob, type TaskContext } from './context.ts';

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
  for (const fact of facts) requireOnPiano(state, fact);
  if (state.seal !== undefined && facts.some((fact) => (fact.reason ?? '').trim() === ''))
    throw new RecordIsSealed(state.seal.at);
  const { entries, job: changed } = await addFacts(
    context,
    job,
    facts.map((fact): Fact => ({ ...fact, v: 1 })),
  );
  return { job: changed, entries: entries.map(({ id }) => id) };
}

const spokenKinds: Record<SaidKind, string> = {
  'size-stamp': 'this stamp',
  'winding-described': 'this winding',
  'wire-path': 'this wire',
  'soft-part': 'this part',
  'plate-part': 'this part',
  'sample-kept': 'this sample',
};

function requireOnPiano(state: Job, fact: FactToRecord): void {
  const what = spokenKinds[fact.kind];
  switch (fact.kind) {
    case 'size-stamp':
      requireKey(state, fact.key, what);
      break;
    case 'winding-described':
      requireKey(state, fact.key, what);
      if (fact.string !== undefined) requireString(state, { key: fact.key, string: fact.string }, what);
      if (state.unisons.get(fact.key)?.winding === 'plain')
        throw new RangeError(
          `Cannot keep ${what}: a note with wound strings is needed, ${noteName(fact.key)} is described as plain. Choose another note, or correct its stringing.`,
        );
      break;
    case 'wire-path':
      for (const string of fact.strings) requireString(state, string, what);
      requireTwoStrings(fact.strings);
      break;
    case 'soft-part':
    case 'plate-part':
      requireSection(state, fact.section, what);
      break;
    case 'sample-kept': {
      const { key, string, section } = fact.place;
      if (key !== undefined) requireKey(state, key, what);
      if (key !== undefined && string !== undefined) requireString(state, { key, string }, what);
      if (section !== undefined) requireSection(state, section, what);
      break;
    }
  }
}

function requireKey({ piano }: Job, key: number, what: string): void {
  if (piano === undefined || (key >= piano.firstKey && key <= piano.lastKey)) return;
  throw new RangeError(
    `Cannot keep ${what}: a note from ${noteName(piano.firstKey)} to ${noteName(piano.lastKey)} is needed, ${noteName(key)} was found. Check the note, or the piano's compass.`,
  );
}

function requireString(state: Job, { key, string }: StringPlace, what: string): void {
  requireKey(state, key, what);
  const strings = state.unisons.get(key)?.strings;
  if (strings !== undefined && string <= strings) return;
  throw new RangeError(
    strings === undefined
      ? `Cannot keep ${what}: the stringing of ${noteName(key)} is needed, it is not described. Describe it under Sections first.`
      : `Cannot keep ${what}: a string from 1 to ${strings} of ${noteName(key)} is needed, string ${string} was found. Check the string, or the stringing of the note.`,
  );
}

function requireTwoStrings(strings: readonly StringPlace[]): void {
  const [one, other] = strings;
  if (one === undefined || other === undefined) return;
  if (one.key === other.key && one.string === other.string)
    throw new RangeError(
      `Cannot keep this wire: two different strings are needed, ${noteName(one.key)} string ${one.string} was found twice. Choose its other string, or say that it is tied.`,
    );
}

function requireSection({ sections }: Job, section: string, what: string): void {
  if (sections.some((one) => one.section === section)) return;
  const names = sections.map((one) => one.section).join(', ');
  throw new RangeError(
    `Cannot keep ${what}: a section of this piano is needed (${names || 'none is described'}), '${section}' was found. Choose one, or describe it first.`,
  );
}
