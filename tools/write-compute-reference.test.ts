import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { computeReference, computeReferenceFile } from './write-compute-reference.ts';

it('docs/reference/compute.md is what the schemas say now (else: node --import tsx tools/write-compute-reference.ts)', () => {
  expect(readFileSync(computeReferenceFile, 'utf8')).toBe(computeReference());
});
