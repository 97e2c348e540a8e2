import { type ErrorCode, errorAnswer } from '@becket/contract';
import { english, type Language } from '@becket/core';
import { BassOrderNotReady, errorSentence } from '@becket/tasks';
import { type ExitStatus, exitStatus } from './exit-status.ts';
import { NoStore, WrongUse } from './refusals.ts';

/** A failure as the technician reads it, and the status the program ends with. */
export interface Failure {
  readonly sentence: string;
  readonly status: ExitStatus;
  readonly code: ErrorCode | 'file-not-found' | 'store-not-found' | 'wrong-use' | 'cannot-listen';
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
export function failureOf(error: unknown, language: Language = english): Failure {
  const { say } = language;
  if (error instanceof WrongUse) {
    return {
      sentence: `${error.message} ${say('Try becket --help.')}`,
      status: exitStatus.wrongUse,
      code: 'wrong-use',
    };
  }
  if (error instanceof NoStore) {
    return { sentence: error.message, status: exitStatus.notFound, code: 'store-not-found' };
  }
  if (error instanceof Error && ['CannotListen', 'AccountsNeeded'].includes(error.name)) {
    return { sentence: error.message, status: exitStatus.badInput, code: 'cannot-listen' };
  }
  if (error instanceof BassOrderNotReady) {
    const { message, open } = error;
    return { sentence: message, status: exitStatus.notNow, code: 'not-possible', details: { open } };
  }
  const answer = errorAnswer(error);
  if (answer !== undefined) {
    const { code, message, details } = answer;
    const sentence = error instanceof Error ? errorSentence(error, language) : message;
    return { sentence, status: statusOfCode[code] ?? exitStatus.badInput, code, details };
  }
  if (error instanceof Error && 'code' in error && (error.code === 'ENOENT' || error.code === 'EISDIR')) {
    const path = 'path' in error ? String(error.path) : say('the file');
    return {
      sentence: say('Cannot read {path}: there is no such file. Check its name and folder.', { path }),
      status: exitStatus.notFound,
      code: 'file-not-found',
    };
  }
  const words = error instanceof Error ? (error.stack ?? error.message) : String(error);
  return {
    sentence: say('Becket stopped at a fault of its own; nothing was stored by this command. {words}', {
      words,
    }),
    status: exitStatus.fault,
    code: 'internal',
  };
}
