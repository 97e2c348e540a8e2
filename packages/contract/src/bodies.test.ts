import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as contract from './index.ts';

/**
 * Samples as plain files that a client in any language can use: samples/<schema>/<valid or invalid>/<name>.json.
 */
const folder = new URL('../samples/', import.meta.url);
const schemas: Record<string, { safeParse: (data: unknown) => { success: boolean } }> = {
  'entries-to-add': contract.entriesToAddSchema,
  entry: contract.entrySchema,
  'entries-page': contract.entriesPageSchema,
  'error-answer': contract.errorAnswerSchema,
  'import-request': contract.importRequestSchema,
  'job-list': contract.jobListSchema,
  'new-job': contract.newJobSchema,
  'strip-check': contract.stripCheckSchema,
};

describe('the samples', () => {
  it('are there for every schema, valid and invalid', () => {
    expect(readdirSync(folder).sort()).toEqual(Object.keys(schemas).sort());
  });

  for (const [name, schema] of Object.entries(schemas)) {
    for (const kind of ['valid', 'invalid']) {
      const here = new URL(`${name}/${kind}/`, folder);
      for (const file of readdirSync(here)) {
        it(`${name}: ${file} is ${kind}`, () => {
          const data: unknown = JSON.parse(readFileSync(new URL(file, here), 'utf8'));
          expect(schema.safeParse(data).success).toBe(kind === 'valid');
        });
      }
    }
  }
});
