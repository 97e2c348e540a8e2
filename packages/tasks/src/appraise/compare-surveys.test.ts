import type { FactOf, Job } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { addFacts, readJob, type TaskContext } from '../context.ts';
import { openDemoJob } from '../demo/open-demo-job.ts';
import { openJob } from '../open-job.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { sealAsItStands } from '../testing/seal-as-it-stands.ts';
import { compareSurveys, type SurveyChange } from './compare-surveys.ts';
import { copyEarlierSurvey } from './copy-earlier-survey.ts';
import { type FindingToRecord, recordFindings } from './record-finding.ts';

type Seen = Extract<FactOf<'finding'>['answer'], { is: 'seen' }>;
const seen = (
  thing: FindingToRecord['thing'],
  section: string,
  answer: Partial<Seen> = {},
  copiedFrom?: string,
): FindingToRecord => ({
  thing,
  place: { section },
  answer: { is: 'seen', what: 'a crack', gravity: 'clear', whatToDo: 'nothing', ...answer },
  ...(copiedFrom === undefined ? {} : { copiedFrom }),
});
const says = (
  thing: FindingToRecord['thing'],
  is: 'sound' | 'could not be seen' | 'does not apply',
  copiedFrom?: string,
): FindingToRecord => ({
  thing,
  place: {},
  answer: { is },
  ...(copiedFrom === undefined ? {} : { copiedFrom }),
});

async function compared(findings: readonly FindingToRecord[]) {
  const context = memoryContext();
  const { id } = await openDemoJob(context);
  return compareSurveys(await recordFindings(context, id, findings));
}

const BEFORE = '2021-05-04';

describe('compareSurveys()', () => {
  const cases: readonly (readonly [
    string,
    FindingToRecord | undefined,
    FindingToRecord | undefined,
    SurveyChange,
  ])[] = [
    [
      'longer by more than readings differ',
      seen('board-cracks', 'bass', { extent_m: 0.1 }, BEFORE),
      seen('board-cracks', 'bass', { extent_m: 0.106 }),
      'grew',
    ],
    [
      'longer by less',
      seen('board-cracks', 'bass', { extent_m: 0.1 }, BEFORE),
      seen('board-cracks', 'bass', { extent_m: 0.104 }),
      'as before',
    ],
    [
      'shorter',
      seen('board-cracks', 'bass', { extent_m: 0.1 }, BEFORE),
      seen('board-cracks', 'bass', { extent_m: 0.08 }),
      'reads shorter',
    ],
    [
      'graver by eye',
      seen('board-cracks', 'bass', { gravity: 'slight' }, BEFORE),
      seen('board-cracks', 'bass', { gravity: 'grave' }),
      'graver',
    ],
    [
      'not measured both times',
      seen('board-cracks', 'bass', { extent_m: 0.1 }, BEFORE),
      seen('board-cracks', 'bass'),
      'as before',
    ],
    [
      'mended',
      seen('bridge-cap', 'bass', {}, BEFORE),
      { ...says('bridge-cap', 'sound'), place: { section: 'bass' } },
      'sound now',
    ],
    ['sound twice', says('action', 'sound', BEFORE), says('action', 'sound'), 'still sound'],
    [
      'sound before',
      { ...says('rib-cracks', 'sound', BEFORE), place: { section: 'bass' } },
      seen('rib-cracks', 'bass'),
      'new',
    ],
    [
      'hidden before',
      { ...says('rib-cracks', 'could not be seen', BEFORE), place: { section: 'bass' } },
      seen('rib-cracks', 'bass'),
      'cannot be compared',
    ],
    [
      'hidden now',
      seen('rib-cracks', 'bass', {}, BEFORE),
      { ...says('rib-cracks', 'could not be seen'), place: { section: 'bass' } },
      'could not be seen now',
    ],
    ['passed over', seen('rib-cracks', 'bass', {}, BEFORE), undefined, 'not looked at again'],
    ['never looked at before', undefined, seen('rib-cracks', 'bass'), 'not looked at before'],
  ];
  it.each(cases)('calls what is %s so', async (_, earlier, now, change) => {
    const { lines } = await compared([earlier, now].filter((one) => one !== undefined));
    expect(lines.map((line) => line.change)).toEqual([change]);
    expect(lines[0]!.sentence.length).toBeGreaterThan(20);
  });

  it('calls a thing new elsewhere when the earlier survey looked for it', async () => {
    const { lines, days } = await compared([
      seen('board-cracks', 'bass', {}, BEFORE),
      seen('board-cracks', 'bass'),
      seen('board-cracks', 'tenor'),
    ]);
    expect(lines.map(({ place, change }) => [place.section, change])).toEqual([
      ['bass', 'as before'],
      ['tenor', 'new'],
    ]);
    expect(days).toEqual([BEFORE]);
  });

  it('pairs several of one place by their words, whatever their order', async () => {
    const { lines } = await compared([
      seen('board-cracks', 'bass', { what: 'by rib 3', extent_m: 0.1 }, BEFORE),
      seen('board-cracks', 'bass', { what: 'by rib 5', extent_m: 0.3 }, BEFORE),
      seen('board-cracks', 'bass', { what: 'by rib 5', extent_m: 0.3 }),
      seen('board-cracks', 'bass', { what: 'By rib 3', extent_m: 0.12 }),
      seen('board-cracks', 'bass', { what: 'by rib 9', extent_m: 0.02 }),
    ]);
    expect(lines.map(({ now, change }) => [now?.answer.is === 'seen' && now.answer.what, change])).toEqual([
      ['By rib 3', 'grew'],
      ['by rib 5', 'as before'],
      ['by rib 9', 'new'],
    ]);
    expect(lines[0]!.grownBy).toBeCloseTo(0.02, 12);
    expect(lines[0]!.sentence).toContain('grew by 20 mm since 4 May 2021');
  });

  it('says which repairs hold', async () => {
    const { lines } = await compared([
      seen('board-repairs', 'bass', { repair: 'holds' }, BEFORE),
      seen('board-repairs', 'bass', { repair: 'fails' }),
      seen('board-repairs', 'tenor', { repair: 'holds' }),
      seen('board-repairs', 'low treble', { repair: 'holds' }, BEFORE),
    ]);
    const bySection = Object.fromEntries(lines.map(({ place, repair }) => [place.section, repair]));
    expect(bySection).toEqual({ bass: 'fails', tenor: 'holds', 'low treble': undefined });
  });

  it('takes the latest of several earlier surveys', async () => {
    const { lines, days } = await compared([
      seen('board-cracks', 'bass', { extent_m: 0.05 }, '2015-01-01'),
      seen('board-cracks', 'bass', { extent_m: 0.1 }, BEFORE),
      seen('board-cracks', 'bass', { extent_m: 0.1 }),
    ]);
    expect(lines.map(({ change, earlierDay }) => [change, earlierDay])).toEqual([['as before', BEFORE]]);
    expect(days).toEqual([BEFORE, '2015-01-01']);
  });
});

describe('copyEarlierSurvey()', () => {
  const earlierContext = (context: TaskContext): TaskContext => ({
    ...context,
    now: () => new Date('2021-05-04T09:00:00Z'),
  });
  async function twoJobs(): Promise<{ context: TaskContext; earlier: Job; today: Job }> {
    const context = memoryContext();
    const past = earlierContext(context);
    const { id } = await openDemoJob(past);
    const earlier = await recordFindings(past, id, [
      seen('board-cracks', 'bass', { extent_m: 0.1 }),
      says('plate-cracks', 'sound'),
    ]);
    return { context, earlier, today: await openDemoJob(context) };
  }

  it('brings lines in with the day they were made, and never twice', async () => {
    const { context, earlier, today } = await twoJobs();
    const once = await copyEarlierSurvey(context, today.id, earlier.id);
    expect(once).toMatchObject({ copied: 2, already: 0, notOnThisPiano: [] });
    expect(once.job.findings.map(({ copiedFrom }) => copiedFrom)).toEqual([BEFORE, BEFORE]);
    const twice = await copyEarlierSurvey(context, today.id, earlier.id);
    expect(twice).toMatchObject({ copied: 0, already: 2 });
    expect(twice.job.entryCount).toBe(once.job.entryCount);
    expect(compareSurveys(twice.job).lines.map(({ change }) => change)).toEqual([
      'not looked at again',
      'not looked at again',
    ]);
  });

  it('gives a reason after the seal, and leaves photos with their job', async () => {
    const { context, earlier, today } = await twoJobs();
    await sealAsItStands(context, today.id);
    const { job } = await copyEarlierSurvey(context, today.id, earlier.id);
    expect(job.amendments.map(({ reason }) => reason)).toEqual([
      'copied from the survey of 4 May 2021',
      'copied from the survey of 4 May 2021',
    ]);
    expect(job.findings.every(({ photos }) => photos === undefined)).toBe(true);
  });

  it('refuses itself, a job without a survey, a later one and another serial number', async () => {
    const { context, earlier, today } = await twoJobs();
    await expect(copyEarlierSurvey(context, today.id, today.id)).rejects.toThrow('this job itself');
    const bare = await openJob(context, { title: 'bare' });
    await expect(copyEarlierSurvey(context, today.id, bare.id)).rejects.toThrow('it has none');
    const now = await recordFindings(context, today.id, [says('action', 'sound')]);
    await expect(copyEarlierSurvey(context, earlier.id, now.id)).rejects.toThrow(
      'before this job was opened',
    );
    const numbered = async (id: Job['id'], serialNumber: string) => {
      const { piano } = await readJob(context, id);
      const { entry: _, step: __, at: ___, by: ____, ...described } = piano!;
      await addFacts(context, id, [{ ...described, serialNumber }]);
    };
    await numbered(earlier.id, '111');
    await numbered(today.id, '222');
    await expect(copyEarlierSurvey(context, today.id, earlier.id)).rejects.toThrow('same piano');
    expect((await readJob(context, today.id)).findings).toHaveLength(1);
  });

  it('tells which lines have no place on this piano, and copies the rest', async () => {
    const { context, earlier } = await twoJobs();
    const bare = await openJob(context, { title: 'bare' });
    const copied = await copyEarlierSurvey(context, bare.id, earlier.id);
    expect(copied).toMatchObject({ copied: 1, notOnThisPiano: ['bass'] });
  });
});
