import { expect, test } from 'vitest';
import { jobLines } from './job-list.ts';

const listed = (job: string, lastAt: string, title = job) => ({
  job,
  title,
  customer: undefined,
  entries: 1,
  lastAt,
  isSealed: false,
});

test('a job that is here and on the server stands once, as this device knows it', () => {
  const lines = jobLines(
    [listed('A', '2026-03-02T10:00:00Z', 'newer here'), listed('B', '2026-03-01T10:00:00Z')],
    [listed('A', '2026-03-01T09:00:00Z', 'older there'), listed('C', '2026-03-03T10:00:00Z')],
  );
  expect(lines.map(({ job, title, isHere, isOnServer }) => [job, title, isHere, isOnServer])).toEqual([
    ['C', 'C', false, true],
    ['A', 'newer here', true, true],
    ['B', 'B', true, false],
  ]);
});
