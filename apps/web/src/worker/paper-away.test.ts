import { describe, expect, it } from 'vitest';
import { type PaperAnswer, PaperStopped, type PaperWorker, paperMaker } from './paper-away.ts';

/** A maker over workers that answer what the test says. */
function begun() {
  const workers: { worker: PaperWorker; asked: { number: number }[]; isEnded: boolean }[] = [];
  const maker = paperMaker(() => {
    const own = { asked: [] as { number: number }[], isEnded: false } as (typeof workers)[number];
    own.worker = {
      postMessage: (question: unknown) => void own.asked.push(question as { number: number }),
      terminate: () => {
        own.isEnded = true;
      },
      onmessage: null,
      onerror: null,
    };
    workers.push(own);
    return own.worker;
  });
  const make = () => maker.make('01ARZ3NDEKTSV4RRFFQ69G5FAV', { paper: 'cut-list', locale: 'en-GB' });
  const answer = (index: number, data: PaperAnswer) =>
    workers[index]!.worker.onmessage?.call(
      workers[index]!.worker as Worker,
      { data } as MessageEvent<PaperAnswer>,
    );
  return { maker, make, answer, workers };
}
const made = (number: number): PaperAnswer => ({
  number,
  is: 'made',
  content: new Blob(['paper']),
  fileName: `${number}.pdf`,
});

describe('paperMaker()', () => {
  it('keeps its worker, and gives each paper to whoever asked for it', async () => {
    const { make, answer, workers } = begun();
    const [first, second] = [make(), make()];
    expect(workers).toHaveLength(1);
    const [one, two] = workers[0]!.asked.map(({ number }) => number);
    answer(0, made(two!));
    answer(0, { number: one!, is: 'failed', sentence: 'Cannot find the job.' });
    await expect(second).resolves.toMatchObject({ fileName: `${two}.pdf` });
    await expect(first).rejects.toThrow('Cannot find the job.');
    expect(workers[0]!.isEnded).toBe(false);
  });

  it('gives no paper once it was stopped, whatever still comes, and begins anew', async () => {
    const { maker, make, answer, workers } = begun();
    const first = make();
    maker.stop();
    await expect(first).rejects.toBeInstanceOf(PaperStopped);
    expect(workers[0]!.isEnded).toBe(true);
    const second = make();
    expect(workers).toHaveLength(2);
    const { number } = workers[1]!.asked[0]!;
    answer(0, made(workers[0]!.asked[0]!.number));
    answer(1, made(number));
    await expect(second).resolves.toMatchObject({ fileName: `${number}.pdf` });
  });

  it('says what to do when its worker breaks, and is whole again for the next paper', async () => {
    const { make, answer, workers } = begun();
    const first = make();
    let isPrevented = false;
    const event = { preventDefault: () => (isPrevented = true) } as unknown as ErrorEvent;
    workers[0]!.worker.onerror?.call(workers[0]!.worker as Worker, event);
    expect(isPrevented).toBe(true);
    await expect(first).rejects.toThrow(/^Could not make this paper: .* Nothing was changed/);
    const second = make();
    answer(1, made(workers[1]!.asked[0]!.number));
    await expect(second).resolves.toBeDefined();
  });
});
