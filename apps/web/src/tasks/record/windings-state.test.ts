import { readJob, recordFacts } from '@becket/tasks';
import { beforeEach, describe, expect, it } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import { windingsOf } from './parts-state.ts';
import { type WindingForm, windingForm, windingRuns } from './windings-state.ts';

let context: ReturnType<typeof testContext>;
let id: string;
beforeEach(async () => {
  context = testContext();
  id = await testJob(context);
});

async function keep(form: Partial<WindingForm>): Promise<void> {
  const job = await readJob(context, id);
  const { string, ...rest } = { ...windingForm(windingRuns(job, 'bass')), ...form };
  await recordFacts(
    context,
    id,
    windingsOf(job, { ...rest, string: string === 'every string' ? undefined : Number(string) }),
  );
}
const runs = async () =>
  windingRuns(await readJob(context, id), 'bass').map(
    ({ firstKey, lastKey, string, said }) =>
      `${firstKey}-${lastKey}${string === undefined ? '' : `·${string}`} ${said?.loopStyle ?? '?'}, ${said?.twist ?? '?'}`,
  );

describe('windingRuns()', () => {
  it('tells notes that are alike in one run, and what nobody said as such', async () => {
    expect(await runs()).toEqual(['1-26 ?, ?']);
    await keep({ from: 'A0', to: 'E1', twist: 'left' });
    expect(await runs()).toEqual(['1-8 single loop, left', '9-26 ?, ?']);
  });

  it('tells a string that was replaced apart, until something is said of every string of its note', async () => {
    await keep({ from: 'A0', to: 'A#2' });
    await keep({ from: 'C1', to: '', string: '2', loopStyle: 'double loop', twist: 'left' });
    expect(await runs()).toEqual([
      '1-4 single loop, right',
      '4-4·2 double loop, left',
      '5-26 single loop, right',
    ]);
    await keep({ from: 'C1', to: 'C1', string: 'every string', loopStyle: 'twisted loop' });
    expect(await runs()).toEqual([
      '1-3 single loop, right',
      '4-4 twisted loop, right',
      '5-26 single loop, right',
    ]);
  });

  it('refuses a string that a note does not have', async () => {
    await expect(keep({ from: 'C1', to: 'D1', string: '3' })).rejects.toThrow(
      'a note with a string 3 is needed, C1 has 2 strings',
    );
    expect(await runs()).toEqual(['1-26 ?, ?']);
  });
});

describe('windingForm()', () => {
  it('begins with what stands of a run, so that what is not changed stays', async () => {
    await keep({ from: 'A0', to: 'E1', twist: 'left', loopStyle: 'double loop' });
    const [first] = windingRuns(await readJob(context, id), 'bass');
    expect(windingForm([first!], first)).toEqual({
      from: 'A0',
      to: 'E1',
      string: 'every string',
      loopStyle: 'double loop',
      twist: 'left',
    });
  });

  it('goes on with the notes of which nothing is said, made as those before', async () => {
    await keep({ from: 'A0', to: 'E1', twist: 'left' });
    expect(windingForm(windingRuns(await readJob(context, id), 'bass'))).toMatchObject({
      from: 'F1',
      to: 'A#2',
      twist: 'left',
    });
  });
});
