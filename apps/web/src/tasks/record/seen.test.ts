import { asFoundRecord } from '@becket/journal';
import { readJob, recordReadings } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import { keepSeen, openThings, seenForm, thingsSeen } from './seen.ts';

async function start() {
  const context = testContext();
  const id = await testJob(context);
  const now = async () => {
    const job = await readJob(context, id);
    const record = asFoundRecord(job);
    return {
      job,
      open: openThings(job, record, 'bass'),
      of: (thing: string, section: string | undefined = 'bass') =>
        thingsSeen(job, record, section).find((one) => one.thing === thing)!,
    };
  };
  const keep = (
    thing: 'felts' | 'punchings' | 'dampers' | 'loops',
    answer: 'known' | 'none' | 'unknown' | 'does not apply',
    text = '',
    section: string | undefined = 'bass',
  ) =>
    now().then(({ of }) => keepSeen(context, id, { ...of(thing, section), section }, { answer, text }, {}));
  return { context, id, now, keep };
}

describe('things seen', () => {
  it('are all open at first, remarks excepted, and none is open on the whole piano', async () => {
    const { now } = await start();
    const { open, job } = await now();
    expect(open).toBe(9);
    expect(thingsSeen(job, asFoundRecord(job), undefined).some(({ isOpen }) => isOpen)).toBe(false);
  });

  it('are closed by none and by does not apply, and stay open as unknown: three different things', async () => {
    const { now, keep } = await start();
    await keep('felts', 'none');
    await keep('punchings', 'does not apply', 'no punchings in this action');
    await keep('dampers', 'unknown');
    const { open, of } = await now();
    expect(open).toBe(7);
    expect([of('felts'), of('punchings'), of('dampers')].map(({ words }) => words)).toEqual([
      'none',
      'does not apply: no punchings in this action',
      'unknown',
    ]);
    expect(of('dampers').isOpen).toBe(true);
  });

  it('are closed for a section by what is said of the whole piano, or measured', async () => {
    const { context, id, now, keep } = await start();
    await keepSeen(
      context,
      id,
      { thing: 'dampers', section: undefined, seen: undefined },
      { answer: 'known', text: 'in order of the keys' },
      {},
    );
    expect((await now()).of('dampers').words).toBe('on the whole piano: in order of the keys');
    const spacing = { place: { key: 5 }, value: 14, unit: 'mm' as const };
    await recordReadings(context, id, [{ ...spacing, quantity: 'strike-line-spacing' }]);
    expect((await now()).of('spacing').isOpen).toBe(true);
    await recordReadings(context, id, [{ ...spacing, quantity: 'bridge-spacing' }]);
    expect((await now()).of('spacing').words).toBe('measured');
    await keep('loops', 'known', 'all tied');
    expect((await now()).open).toBe(6);
  });

  it('said again stand in place of what was said, and words are needed for what is there', async () => {
    const { now, keep } = await start();
    await keep('felts', 'known', 'red, 3 mm');
    await keep('felts', 'known', 'green, 3 mm');
    const { job, of } = await now();
    expect(job.observations).toHaveLength(1);
    expect(seenForm(of('felts').seen)).toEqual({ answer: 'known', text: 'green, 3 mm' });
    await expect(keep('felts', 'known', ' ')).rejects.toThrow(/words are needed/);
  });
});
