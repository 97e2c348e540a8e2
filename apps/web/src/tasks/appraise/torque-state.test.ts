import { foldJob } from '@becket/journal';
import { recordReadings } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import { newTorqueForm, nextPin, readTypedTorque, torqueReadingOf, torqueText } from './torque-state.ts';

describe('a torque as hands and wrenches type it', () => {
  it.each([
    ['118', 118, undefined],
    ['13,5 Nm', 13.5, 'N·m'],
    ['13.5 N·m', 13.5, 'N·m'],
    ['120 in·lbf', 120, 'in·lbf'],
    ['120in-lb'.replace('-', ' '), 120, 'in·lbf'],
    ['140 kgf·cm', 140, 'kgf·cm'],
  ])('reads %s', (text, value, unit) => {
    expect(readTypedTorque(text)).toEqual({ value, unit });
  });

  it('refuses nothing, words and lengths with a sentence', () => {
    expect(() => readTypedTorque(' ')).toThrow(/a value is needed/);
    expect(() => readTypedTorque('tight')).toThrow(/a number such as 118/);
    expect(() => readTypedTorque('7 mm')).toThrow(/a number such as 118/);
  });

  // 1 lbf = 4.4482216152605 N, 1 in = 0.0254 m (exact, international pound and inch): 120 in·lbf = 13.558 N·m.
  it('is read back in both units', () => {
    expect(torqueText(13.5582)).toBe('13.6 N·m = 120 in·lbf');
  });
});

describe('torque along the block', () => {
  it('is kept with direction and string state, and goes on by every fourth note to the last', async () => {
    const context = testContext();
    const id = await testJob(context);
    const job = foldJob((await context.store.entries(id)).entries);
    let form = { ...newTorqueForm(1), value: '118' };
    const visited: string[] = [];
    for (;;) {
      visited.push(form.note);
      const next = nextPin(job, form);
      if (next === undefined) break;
      form = { ...form, ...next };
    }
    const both = { ...newTorqueForm(1), isBothWays: true };
    expect(nextPin(job, both)).toEqual({ note: 'A0', string: 1, turning: 'flat' });
    expect(nextPin(job, { ...both, turning: 'flat' })).toEqual({ note: 'C#1', string: 1, turning: 'sharp' });
    expect(visited).toHaveLength(22);
    expect(visited.slice(0, 3)).toEqual(['A0', 'C#1', 'F1']);
    const { job: changed } = await recordReadings(context, id, [
      torqueReadingOf({ ...form, feel: 'creeps' }, ''),
      torqueReadingOf({ ...form, turning: 'no string pull', value: '11 Nm' }, ''),
    ]);
    expect(changed.readings.map(({ condition, feel, asRead }) => [condition, feel, asRead.unit])).toEqual([
      [{ strings: 'on', turning: 'sharp' }, 'creeps', 'in·lbf'],
      [{ strings: 'let down' }, undefined, 'N·m'],
    ]);
  });
});
