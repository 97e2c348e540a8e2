import { type ErrorAnswer, type ErrorCode, errorAnswer, errorCodes } from '@becket/contract';
import { firstProblem } from '@becket/journal';
import type { Context } from 'hono';
import { HTTPException } from 'hono/http-exception';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import type { ZodError } from 'zod';

/** Thrown by a route to answer with an error. */
export class Refused extends Error {
  override readonly name = 'Refused';
  readonly answer: ErrorAnswer;
  constructor(code: ErrorCode, message: string, details?: Record<string, unknown>) {
    super(message);
    this.answer = { code, message, ...(details === undefined ? {} : { details }) };
  }
}

/** Answers with an error: its code, one sentence, and details for programs. */
export function refuse(
  c: Context,
  code: ErrorCode,
  message: string,
  details?: Record<string, unknown>,
): Response {
  return encode(c, { code, message, ...(details === undefined ? {} : { details }) });
}

/** The answer for whatever a route threw. A fault of the program is told to `log` in full, and to the client in general. */
export function answerError(c: Context, error: unknown, log: (fault: unknown) => void): Response {
  const known = error instanceof Refused ? error.answer : errorAnswer(error);
  if (known !== undefined) return encode(c, known);
  if (error instanceof HTTPException) {
    if (error.status === 415) {
      return refuse(
        c,
        'type-not-supported',
        `Cannot read this request: its body is of the type '${c.req.header('content-type') ?? 'none given'}', which ${c.req.method} ${c.req.path} does not take. See /openapi.json for the type it takes.`,
      );
    }
    if (error.status === 400) {
      return refuse(
        c,
        'request-not-understood',
        `Cannot read this request: its body is not the ${c.req.header('content-type') ?? 'type'} it says it is. Check how it was written and send it again.`,
      );
    }
  }
  log(error);
  return refuse(
    c,
    'internal',
    'Something went wrong in the server; nothing was stored by this request. Try again; if it happens again, the server has written the reason to its log.',
  );
}

/** The answer for a request whose address, query or body does not fit its schema; undefined when it fits. */
export function answerMisfit(
  result: { success: true } | { success: false; error: ZodError; target: string },
  c: Context,
): Response | undefined {
  if (result.success) return undefined;
  const where = {
    json: 'its body',
    form: 'its form',
    query: 'its query',
    param: 'its address',
    header: 'its headers',
  }[result.target];
  return refuse(
    c,
    'request-not-understood',
    `Cannot understand this request as ${where ?? result.target} does not fit: ${firstProblem(result.error)}. Correct it and send it again; /openapi.json says what is needed.`,
    { path: result.error.issues[0]?.path ?? [] },
  );
}

function encode(c: Context, answer: ErrorAnswer): Response {
  return c.json(answer, errorCodes[answer.code].status as ContentfulStatusCode);
}
