import { JobNotFound, RecordIsSealed, SurveyIncomplete } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { type ErrorCode, errorAnswer, errorCodeNames, errorCodes } from './errors.ts';

describe('errorCodes', () => {
  it('have an HTTP status that is not a success, and a meaning', () => {
    for (const code of errorCodeNames) {
      expect(errorCodes[code].status).toBeGreaterThanOrEqual(400);
      expect(errorCodes[code].status).toBeLessThan(600);
      expect(errorCodes[code].meaning).not.toBe('');
      expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
    }
  });
});

describe('errorAnswer()', () => {
  const gap = { name: 'felts/bass', place: {}, what: 'felts', rank: 'costly' as const, sentence: '' };
  it.each<[Error, ErrorCode, Record<string, unknown> | undefined]>([
    [new JobNotFound('01J'), 'job-not-found', { job: '01J' }],
    [new RecordIsSealed('2026-03-01'), 'record-is-sealed', undefined],
    [new SurveyIncomplete([gap]), 'survey-incomplete', { gaps: [gap] }],
    [new RangeError('Cannot record at key 99: this piano has 88.'), 'not-possible', undefined],
    [new SyntaxError('Cannot read this entry: step is missing.'), 'request-not-understood', undefined],
  ])('%s comes with its code, its own sentence and what it carries', (error, code, details) => {
    expect(errorAnswer(error)).toEqual({ code, message: error.message, ...(details && { details }) });
  });

  it('is undefined for a fault of the program, whatever the language calls it', () => {
    const thrown = (work: () => unknown): unknown => {
      try {
        return work();
      } catch (error) {
        return error;
      }
    };
    const faults = [
      new Error('x'),
      new TypeError('x'),
      'a text',
      undefined,
      thrown(() => new Array(-1)),
      thrown(() => JSON.parse('{')),
      thrown(() => (undefined as unknown as { x: { y: number } }).x.y),
    ];
    for (const fault of faults) expect(errorAnswer(fault)).toBeUndefined();
  });
});
