import { type ErrorCode, errorAnswer } from '@becket/contract';
import { type ExitStatus, exitStatus } from './exit-status.ts';

/** A failure as the technician reads it, and the status the program ends with. */
export interface Failure {
  readonly sentence: string;
  readonly status: ExitStatus;
  readonly code: ErrorCode | 'file-not-found';
  readonly details?: Readonly<Record<string, unknown>> | undefined;
}

const statusOfCode: Partial<Record<ErrorCode, ExitStatus>> = {
  'job-not-found': exitStatus.notFound,
  'paper-not-found': exitStatus.notFound,
  'record-is-sealed': exitStatus.notNow,
  'survey-incomplete': exitStatus.notNow,
  'import-has-problems': exitStatus.badInput,
  'request-not-understood': exitStatus.badInput,
  'not-possible': exitStatus.badInput,
  'store-unavailable': exitStatus.store,
  'entry-changed': exitStatus.store,
  'cursor-not-known': exitStatus.store,
};

/** The one place where an error becomes what is said and how the program ends. */
export function failureOf(error: unknown): Failure {
  const answer = errorAnswer(error);
  if (answer !== undefined) {
    const { code, message, details } = answer;
    return { sentence: message, status: statusOfCode[code] ?? exitStatus.badInput, code, details };
  }
  if (error instanceof Error && 'code' in error && (error.code === 'ENOENT' || error.code === 'EISDIR')) {
    const path = 'path' in error ? String(error.path) : 'the file';
    return {
      sentence: `Cannot read ${path}: there is no such file. Check its name and folder.`,
      status: exitStatus.notFound,
      code: 'file-not-found',
    };
  }
  const words = error instanceof Error ? (error.stack ?? error.message) : String(error);
  return {
    sentence: `Becket stopped at a fault of its own; nothing was stored by this command. ${words}`,
    status: exitStatus.fault,
    code: 'internal',
  };
}
