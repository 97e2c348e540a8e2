import { isForTheUser } from '@becket/tasks';

/**
 * Every code an answer that is not a success can carry, with its HTTP status and what it means.
 * The sentence for the user is the answer's `message`; clients decide by the code.
 */
export const errorCodes = {
  'request-not-understood': { status: 400, meaning: 'the request does not fit its schema' },
  'entry-not-understood': {
    status: 400,
    meaning: 'an entry of the batch does not fit its schema; details.index counts from 0',
  },
  'entry-of-another-job': {
    status: 400,
    meaning: 'an entry of the batch belongs to another job than the address; details.index counts from 0',
  },
  'host-not-allowed': { status: 403, meaning: 'the request was made to a name that is not this computer' },
  'origin-not-allowed': { status: 403, meaning: 'the request was made by the page of another site' },
  'job-not-found': { status: 404, meaning: 'the store has no entries of that job' },
  'paper-not-found': { status: 404, meaning: 'there is no paper of that name' },
  'blob-not-found': { status: 404, meaning: 'the store does not have that photo' },
  'route-not-found': { status: 404, meaning: 'nothing is served at that address' },
  'method-not-allowed': {
    status: 405,
    meaning: 'the address does not take that method; the Allow header names those it takes',
  },
  'entry-changed': {
    status: 409,
    meaning: 'an entry is kept already, with other content; details.entry is its id',
  },
  'cursor-not-known': {
    status: 409,
    meaning:
      'the store did not give that cursor, or was restored since: read from the beginning and send your own entries again',
  },
  'record-is-sealed': {
    status: 409,
    meaning: 'the as-found record is sealed and the change came without a reason',
  },
  'survey-incomplete': { status: 409, meaning: 'gaps of the strip check are open; details.gaps lists them' },
  'too-large': {
    status: 413,
    meaning: 'the body, or the batch, is larger than the limit; details.limit is the limit',
  },
  'type-not-supported': { status: 415, meaning: 'the body is of a type the address does not take' },
  'not-possible': { status: 422, meaning: 'the request is well formed, but its values cannot be' },
  'digest-differs': {
    status: 422,
    meaning: 'the bytes of the photo have another digest than the address; details.found is theirs',
  },
  'import-has-problems': {
    status: 422,
    meaning: 'cells must be corrected or left out before anything is brought in; details.problems lists them',
  },
  internal: { status: 500, meaning: 'a fault of the program; the server wrote it to its log' },
  'store-unavailable': { status: 503, meaning: 'the store cannot be read or written at the moment' },
} as const satisfies Record<string, { status: number; meaning: string }>;

export type ErrorCode = keyof typeof errorCodes;
export const errorCodeNames = Object.keys(errorCodes) as [ErrorCode, ...ErrorCode[]];

/** What every answer that is not a success looks like. */
export interface ErrorAnswer {
  readonly code: ErrorCode;
  /** One sentence for the user: what failed, what is needed, what was found, what to do. */
  readonly message: string;
  readonly details?: Readonly<Record<string, unknown>> | undefined;
}

/** The code for an error by its name. Errors that no task throws on purpose have none: they are faults. */
const codesByErrorName: Readonly<Record<string, ErrorCode>> = {
  JobNotFound: 'job-not-found',
  EntryChanged: 'entry-changed',
  CursorNotKnown: 'cursor-not-known',
  RecordIsSealed: 'record-is-sealed',
  SurveyIncomplete: 'survey-incomplete',
  CellsNotReadable: 'import-has-problems',
  StoreUnavailable: 'store-unavailable',
  // The caller's mistakes, as tasks throw them: text that does not parse, a value outside its range.
  SyntaxError: 'request-not-understood',
  RangeError: 'not-possible',
};

/** Fields of an error that go along as details. */
const detailFields = ['entry', 'cursor', 'job', 'openGaps', 'problems', 'problem'] as const;

/**
 * The answer for an error that a task threw; undefined for a fault of the program, whose words are not for the user.
 */
export function errorAnswer(error: unknown): ErrorAnswer | undefined {
  if (!(error instanceof Error)) return undefined;
  const code = codesByErrorName[error.name];
  if (code === undefined) return undefined;
  // The engine throws RangeError and SyntaxError too, and its words are not for the user.
  if (!isForTheUser(error)) return undefined;
  const details: Record<string, unknown> = {};
  for (const field of detailFields) {
    const value = (error as unknown as Record<string, unknown>)[field];
    if (value !== undefined) details[field === 'openGaps' ? 'gaps' : field] = value;
  }
  return { code, message: error.message, ...(Object.keys(details).length === 0 ? {} : { details }) };
}
