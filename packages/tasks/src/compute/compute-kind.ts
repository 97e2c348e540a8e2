import * as z from 'zod';

/**
 * One kind of calculation that a line can ask for. Requests and answers are SI, with the unit at the end of each key.
 * A further kind is one more file and one more line in `compute-kinds.ts`; the reference page is written from the schemas.
 */
export interface ComputeKind {
  readonly kind: string;
  /** What it answers, in one sentence. */
  readonly summary: string;
  /** What the answer rests on, as sentences for the reference page. */
  readonly notes: readonly string[];
  readonly request: z.ZodObject;
  readonly answer: z.ZodObject;
  /** A request that works, for the reference page and the tests. */
  readonly example: Readonly<Record<string, unknown>>;
  readonly compute: (request: never) => unknown;
}

/** Declares a kind; the types of `compute` follow from its schemas. */
export function computeKind<Request extends z.ZodObject, Answer extends z.ZodObject>(kind: {
  readonly kind: string;
  readonly summary: string;
  readonly notes?: readonly string[];
  readonly request: Request;
  readonly answer: Answer;
  readonly example: Readonly<Record<string, unknown>>;
  readonly compute: (request: z.output<Request>) => z.input<Answer>;
}): ComputeKind {
  return { notes: [], ...kind };
}

/** A number above zero. */
export const positive = (what: string) => z.number().positive().describe(what);
/** Zero or above. */
export const notNegative = (what: string) => z.number().nonnegative().describe(what);
/** A figure of an answer. */
export const figure = (what: string) => z.number().describe(what);
