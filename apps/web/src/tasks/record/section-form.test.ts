import { foldJob } from '@becket/journal';
import { recordFacts, type TaskContext } from '@becket/tasks';
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
  await takeSectionOut(context, job, (await state()).sections[0]!, { otherwise: 'not a section' });
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

test('a section is not renamed or taken out from under what is noted of it', async () => {
  const first = (await state()).sections[0]!;
  const felt = { kind: 'soft-part', part: 'felt', section: first.section } as const;
  await recordFacts(context, job, [{ ...felt, answer: { is: 'known', colour: 'red' } }]);
  const before = await names();
  const form = { ...formOfSection(first), name: 'lower' };
  await expect(
    keepSection(context, job, { state: await state(), form, before: first, reason: undefined }),
  ).rejects.toThrow('1 thing is noted under that name and would lose its place');
  await expect(takeSectionOut(context, job, first, { otherwise: 'no section' })).rejects.toThrow(
    `Cannot rename the section '${first.section}' or take it out`,
  );
  expect(await names()).toEqual(before);
});
