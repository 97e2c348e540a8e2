import { english, type Language } from '@becket/core';
import { z } from 'zod';
import { type Fact, factSchema } from './facts/index.ts';
import { type Ulid, ulidSchema } from './ulid.ts';

/** A fact of a kind or version this program does not know. It is kept and shown, never dropped. */
export interface UnknownFact {
  readonly kind: string;
  readonly v: number;
  readonly [field: string]: unknown;
}

const envelope = {
  id: ulidSchema,
  job: ulidSchema,
  /** Lamport counter: one more than the highest step its writer had seen. */
  step: z.int().positive(),
  /** RFC 3339 UTC. For people; the order of entries never depends on a clock. */
  at: z.iso.datetime(),
  /** Who: a name the shop uses. */
  by: z.string().min(1).max(200),
  device: z.string().min(1).max(200),
};

const envelopeSchema = z.object({
  ...envelope,
  fact: z.looseObject({ kind: z.string().min(1), v: z.int().positive() }),
});

/** One immutable line of a job's journal. */
export interface Entry<F = Fact | UnknownFact> {
  readonly id: Ulid;
  readonly job: Ulid;
  readonly step: number;
  readonly at: string;
  readonly by: string;
  readonly device: string;
  readonly fact: F;
}

const knownKinds: ReadonlySet<string> = new Set(
  factSchema.options.map((option) => `${option.shape.kind.value}/${option.shape.v.value}`),
);

/** True when this program has a schema for the fact. */
export function isKnownFact(fact: Fact | UnknownFact): fact is Fact {
  return knownKinds.has(`${fact.kind}/${fact.v}`);
}

/**
 * An entry from data that came from outside (a file, a database, the network).
 *
 * A fact of a known kind must fit its schema; a fact of an unknown kind or of a later version is kept as it is.
 * Throws: SyntaxError naming the field, what it needs and what was found.
 */
export function parseEntry(data: unknown, { say }: Language = english): Entry {
  const outer = envelopeSchema.safeParse(data);
  if (!outer.success)
    throw new SyntaxError(say('Cannot read this entry: {problem}', { problem: firstProblem(outer.error) }));
  const fact = outer.data.fact as UnknownFact;
  if (!isKnownFact(fact)) return outer.data as Entry;
  const known = factSchema.safeParse(fact);
  if (!known.success) {
    throw new SyntaxError(
      say("Cannot read the fact '{kind}' of entry {entry}: {problem}", {
        kind: fact.kind,
        entry: outer.data.id,
        problem: firstProblem(known.error),
      }),
    );
  }
  return { ...outer.data, fact: known.data } as Entry;
}

/**
 * Why a fact that is about to be made cannot be kept, for the person who typed it: the text that is too long, rather than
 * the field of a schema. Undefined when it can be kept.
 */
export function problemOfNewFact(fact: unknown, { say }: Language = english): string | undefined {
  const read = factSchema.safeParse(fact);
  if (read.success) return undefined;
  const issue = read.error.issues[0];
  const found = issue?.path.reduce<unknown>((value, step) => (value as never)?.[step], fact);
  if (issue?.code === 'too_big' && typeof found === 'string')
    return say(
      "Cannot keep this: a text of at most {most} characters is needed, one of {found} was found: '{start} …'. Shorten it.",
      { most: Number(issue.maximum), found: found.length, start: found.slice(0, 30) },
    );
  return say('Cannot keep this as it does not fit the record: {problem}. Correct it and try again.', {
    problem: firstProblem(read.error),
  });
}

/** One clear sentence from a zod error: the first field that does not fit, and what it needs. */
export function firstProblem(error: z.ZodError): string {
  const issue = error.issues[0];
  if (issue === undefined) return 'it does not fit its schema';
  const path = issue.path.join('.');
  return path === '' ? issue.message : `${path}: ${issue.message}`;
}
