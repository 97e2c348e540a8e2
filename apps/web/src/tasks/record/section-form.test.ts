import { foldJob } from '@becket/journal';
import type { TaskContext } from '@becket/tasks';
import { beforeEach, expect, test } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import { formOfSection, keepSection, takeSectionOut } from './section-form.ts';

let context: TaskContext;
let job: string;
const state = async () => foldJob((await context.store.entries(job)).entries);
const names = async () =>
  (await state()).sections.map(({ section, firstKey, lastKey }) => [section, firstKey, lastKey]);

beforeEach(async () => {
  context = testContext();
  job = await testJob(context);
});

test('a section takes another name and keeps its place', async () => {
  const before = (await state()).sections[0]!;
  const form = { ...formOfSection(before), name: 'low bass', lastNote: 'A2' };
  await keepSection(context, job, { state: await state(), form, before, reason: undefined });
  expect(await names()).toEqual([
    ['low bass', 1, 25],
    ['tenor', 27, 88],
  ]);
});

test('a section that overlaps another is refused, and all is as it was', async () => {
  const before = (await state()).sections[0]!;
  const form = { ...formOfSection(before), name: 'low bass', lastNote: 'C4' };
  await expect(
    keepSection(context, job, { state: await state(), form, before, reason: undefined }),
  ).rejects.toThrow(/overlap/);
  expect(await names()).toEqual([
    ['bass', 1, 26],
    ['tenor', 27, 88],
  ]);
});

test('a section that was described twice is taken out whole', async () => {
  const first = (await state()).sections[0]!;
  const form = { ...formOfSection(first), lastNote: 'A2' };
  await keepSection(context, job, { state: await state(), form, before: first, reason: undefined });
  await takeSectionOut(context, job, (await state()).sections[0]!, 'not a section');
  expect(await names()).toEqual([['tenor', 27, 88]]);
});

test('a section without a name is refused in one sentence', async () => {
  const form = {
    name: ' ',
    firstNote: 'A0',
    lastNote: 'A1',
    bridge: '',
    frontTermination: 'unknown' as const,
  };
  await expect(
    keepSection(context, job, { state: await state(), form, before: undefined, reason: undefined }),
  ).rejects.toThrow(/^Cannot keep this section: a name is needed/);
});
