import { english } from '@becket/core';
import { STARTING_PLAN_RULES } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { type PlanAnswer, type PlanWorker, planAway } from './plan-away.ts';

/** A worker that a test speaks for. */
class SpokenWorker implements PlanWorker {
  onmessage: PlanWorker['onmessage'] = null;
  onerror: PlanWorker['onerror'] = null;
  asked: unknown;
  isOver = false;
  postMessage(question: unknown): void {
    this.asked = question;
  }
  terminate(): void {
    this.isOver = true;
  }
  say(data: PlanAnswer): void {
    this.onmessage?.call(this as unknown as Worker, { data } as MessageEvent<PlanAnswer>);
  }
  break(): void {
    const event = { preventDefault() {} } as ErrorEvent;
    this.onerror?.call(this as unknown as Worker, event);
  }
}

function asked() {
  const worker = new SpokenWorker();
  const heard: string[] = [];
  const stop = planAway(
    { notes: [], rules: STARTING_PLAN_RULES },
    (answer) => heard.push(answer.is),
    english,
    () => worker,
  );
  return { worker, heard, stop };
}
const planned: PlanAnswer = { is: 'planned', answers: [], eased: [] };

describe('planAway()', () => {
  it('tells every step and the answer, and lets the worker go after it', () => {
    const { worker, heard } = asked();
    expect(worker.asked).toMatchObject({ rules: STARTING_PLAN_RULES });
    worker.say({ is: 'step', done: 1, of: 2 });
    expect(worker.isOver).toBe(false);
    worker.say(planned);
    expect(heard).toEqual(['step', 'planned']);
    expect(worker.isOver).toBe(true);
  });

  it('says nothing any more once it is stopped', () => {
    const { worker, heard, stop } = asked();
    stop();
    worker.say(planned);
    worker.break();
    expect(heard).toEqual([]);
    expect(worker.isOver).toBe(true);
  });

  it('says in one sentence that a worker broke, once', () => {
    const { worker, heard } = asked();
    worker.break();
    worker.break();
    expect(heard).toEqual(['failed']);
  });
});
