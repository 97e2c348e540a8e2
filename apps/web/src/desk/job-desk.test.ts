// IndexedDB as the standard has it, in memory: Node has none of its own.
import 'fake-indexeddb/auto';
import { describePiano, openJob, type TaskContext } from '@becket/tasks';
import { afterEach, describe, expect, it } from 'vitest';
import { type BrowserStore, openBrowserStore } from '../store/browser-store.ts';
import { testContext } from '../testing/test-job.ts';
import { type JobDesk, openDesk } from './job-desk.ts';

const opened: { store: BrowserStore; desk: JobDesk }[] = [];
let places = 0;

async function deskWithJob(): Promise<JobDesk> {
  places += 1;
  const store = await openBrowserStore(`desk ${places}`);
  const context: TaskContext = { ...testContext(), store };
  const { id } = await openJob(context, { title: 'A grand on trestles' });
  const desk = openDesk(id, store, () => context);
  opened.push({ store, desk });
  return desk;
}
afterEach(async () => {
  for (const { store, desk } of opened.splice(0)) {
    desk.close();
    await store.close();
  }
});

/** A task that ends when it is told to, well or with a sentence. */
function heldTask() {
  let end: (sentence?: string) => void = () => {};
  const ended = new Promise<void>((done, failed) => {
    end = (sentence) => (sentence === undefined ? done() : failed(new RangeError(sentence)));
  });
  // Its end may come before it is begun.
  ended.catch(() => {});
  return { task: () => ended, end: (sentence?: string) => end(sentence) };
}

describe('a job desk', () => {
  it('keeps the sentence of what failed while something else went well', async () => {
    const desk = await deskWithJob();
    const slow = heldTask();
    const keeping = desk.run(slow.task);
    // A typed value waits for nobody.
    await desk.runTyped(() => Promise.reject(new RangeError('Cannot keep this: a reason is needed.')));
    slow.end();
    await keeping;
    expect(desk.problem.get()).toBe('Cannot keep this: a reason is needed.');
  });

  it('begins a task once the one before it is kept and can be seen', async () => {
    const desk = await deskWithJob();
    const hold = heldTask();
    const first = desk.run(async (context, id) => {
      await hold.task();
      return describePiano(context, id, { form: 'grand', firstKey: 1, lastKey: 88, referencePitch_hz: 440 });
    });
    const seen = desk.run(async () => desk.now()?.job.piano?.form ?? 'nothing');
    hold.end();
    await first;
    expect(await seen).toBe('grand');
  });

  it('puts a sentence away once something went well after it', async () => {
    const desk = await deskWithJob();
    await desk.run(() => Promise.reject(new RangeError('Cannot keep this: a reason is needed.')));
    expect(desk.problem.get()).toMatch(/^Cannot keep this/);
    await desk.run(async () => 'kept');
    expect(desk.problem.get()).toBeUndefined();
  });

  it('gives each form its own sentence, and shows none at the head of the page meanwhile', async () => {
    const desk = await deskWithJob();
    const seen: (string | undefined)[] = [];
    desk.problem.subscribe(() => seen.push(desk.problem.get()));
    const [first, second] = [heldTask(), heldTask()];
    const both = Promise.allSettled([desk.runHere(first.task), desk.runHere(second.task)]);
    first.end('Cannot keep the first.');
    second.end('Cannot keep the second.');
    const sentences = (await both).map((one) => one.status === 'rejected' && (one.reason as Error).message);
    expect(sentences).toEqual(['Cannot keep the first.', 'Cannot keep the second.']);
    expect(seen).toEqual([]);
  });

  it('takes a task that gives back nothing as one that went well', async () => {
    const desk = await deskWithJob();
    await expect(desk.runHere(async () => undefined)).resolves.toBeUndefined();
  });
});
