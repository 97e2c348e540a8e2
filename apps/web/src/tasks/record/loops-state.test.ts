import { foldJob, loopMap, newUlid } from '@becket/journal';
import { createMemoryStore } from '@becket/store/memory';
import { describeJob, openJob, readJob, type TaskContext } from '@becket/tasks';
import { describe, expect, test } from 'vitest';
import {
  keepAction,
  loopOnFrom,
  loopStrings,
  loopWithNext,
  notKnown,
  numberPinsFrom,
  sayOfWire,
  tapOn,
  tie,
  undoLoopStep,
} from './loops-state.ts';

let tick = 0;
const contextOf = (): TaskContext => ({
  store: createMemoryStore(),
  now: () => new Date('2026-03-01T10:00:00Z'),
  newId: () => newUlid(new Date(1_700_000_000_000 + tick++), () => 0.5),
  by: 'Ada',
  device: 'bench tablet',
});

/** Two wound strings, then three plain notes of three strings: nine plain strings, an odd count. */
async function board() {
  const context = contextOf();
  const { id } = await openJob(context, {
    title: 'loops',
    piano: { form: 'grand', firstKey: 38, lastKey: 42, referencePitch_hz: 440 },
  });
  await describeJob(context, id, {
    piano: { form: 'grand', firstKey: 38, lastKey: 42, referencePitch_hz: 440 },
    sections: [
      { section: 'tenor', firstKey: 38, lastKey: 42, bridge: 'treble', frontTermination: 'agraffe' },
    ],
    unisons: [
      { firstKey: 38, lastKey: 39, strings: 1, winding: 'wound', layers: 1 },
      { firstKey: 40, lastKey: 42, strings: 3, winding: 'plain', layers: 0 },
    ],
  });
  return { context, id, strings: loopStrings(await readJob(context, id), 'tenor') };
}

describe('loopOnFrom()', () => {
  test('ties wound strings, loops plain neighbours across notes, and ties the odd one left over', async () => {
    const { context, id, strings } = await board();
    const action = loopOnFrom(strings, 0)!;
    expect(action.facts.map((fact) => (fact.kind === 'wire-path' ? fact.joined : ''))).toEqual([
      'tied',
      'tied',
      'looped',
      'looped',
      'looped',
      'looped',
      'tied',
    ]);
    await keepAction(context, id, action, { at: 0, said: {} });
    const job = await readJob(context, id);
    expect(loopMap(job).questions).toEqual([]);
    expect(loopStrings(job, 'tenor')[4]).toMatchObject({
      name: 'C4·3',
      joined: 'looped',
      withString: 'C#4·1',
    });
  });

  test('leaves alone what was said before', async () => {
    const { context, id, strings } = await board();
    await keepAction(context, id, tie(strings, 4)!, { at: 0, said: {} });
    const after = loopStrings(await readJob(context, id), 'tenor');
    await keepAction(context, id, loopOnFrom(after, 2)!, { at: 0, said: {} });
    const joined = loopStrings(await readJob(context, id), 'tenor').map((one) => one.joined);
    expect(joined.slice(2)).toEqual([
      'looped',
      'looped',
      'tied',
      ...Array.from({ length: 6 }, () => 'looped'),
    ]);
  });
});

describe('tapOn()', () => {
  test('a first tap chooses, the same again lets go, a second joins, whichever comes first', async () => {
    const { context, id, strings } = await board();
    expect(tapOn(strings, undefined, 3)).toEqual({ do: 'choose' });
    expect(tapOn(strings, 3, 3)).toEqual({ do: 'let go' });
    const forth = tapOn(strings, 3, 4);
    expect(tapOn(strings, 4, 3)).toEqual(forth);
    if (forth.do !== 'join') throw new Error('a join was wanted');
    await keepAction(context, id, forth.action, { at: 0, said: {} });
    const after = loopStrings(await readJob(context, id), 'tenor');
    // A string that is on a wire is looked at, not joined anew by a stray tap.
    expect(tapOn(after, 2, 3)).toEqual({ do: 'choose' });
  });
});

describe('the wire of a string', () => {
  const pins = async (context: TaskContext, id: string) =>
    loopStrings(await readJob(context, id), 'tenor').map(({ path }) => path?.hitchPin);

  test('goes to hitch pins numbered on from one of them, one a wire, and is asked about where a pin has two', async () => {
    const { context, id, strings } = await board();
    expect(() => numberPinsFrom(strings, 0, '1')).toThrow(/none was found from here on/);
    await keepAction(context, id, loopOnFrom(strings, 0)!, { at: 0, said: {} });
    const looped = loopStrings(await readJob(context, id), 'tenor');
    expect(() => numberPinsFrom(looped, 0, 'first')).toThrow(/a whole number/);
    await keepAction(context, id, numberPinsFrom(looped, 2, '10'), { at: 2, said: {} });
    expect(await pins(context, id)).toEqual([
      undefined,
      undefined,
      ...['10', '10', '11', '11', '12', '12', '13', '13', '14'],
    ]);
    expect(loopMap(await readJob(context, id)).questions).toEqual([]);

    const named = loopStrings(await readJob(context, id), 'tenor');
    const fault = { hitchPin: '12', otherHitchPin: '', note: "a predecessor's repair" };
    await keepAction(context, id, sayOfWire(named[4]!, fault, 4), { at: 4, said: {} });
    expect(loopMap(await readJob(context, id)).questions).toMatchObject([
      { kind: 'hitch pin with two wires' },
      { kind: 'hitch pin left out' },
    ]);
  });

  test('numbered on, a wire that lies round two pins keeps two of them', async () => {
    const { context, id, strings } = await board();
    await keepAction(context, id, loopOnFrom(strings, 0)!, { at: 0, said: {} });
    const now = async () => loopStrings(await readJob(context, id), 'tenor');
    const round = { hitchPin: 'a', otherHitchPin: 'b', note: '' };
    await keepAction(context, id, sayOfWire((await now())[4]!, round, 4), { at: 4, said: {} });
    await keepAction(context, id, numberPinsFrom(await now(), 2, '10'), { at: 2, said: {} });
    expect(await pins(context, id)).toEqual([
      undefined,
      undefined,
      ...['10', '10', '11', '11', '13', '13', '14', '14', '15'],
    ]);
    expect((await now())[4]?.path).toMatchObject({ hitchPin: '11', otherHitchPin: '12' });
    expect(loopMap(await readJob(context, id)).questions).toEqual([]);
  });

  test('keeps its pin and its note when it is said again, and loses them to another wire', async () => {
    const { context, id, strings } = await board();
    const form = { hitchPin: '3', otherHitchPin: '4', note: 'bent' };
    // The pin may be seen before anybody has looked where the wire goes.
    await keepAction(context, id, sayOfWire(strings[2]!, form, 2), { at: 2, said: {} });
    const now = async () => loopStrings(await readJob(context, id), 'tenor');
    expect((await now())[2]).toMatchObject({
      joined: 'unknown',
      path: { hitchPin: '3', otherHitchPin: '4' },
    });
    await keepAction(context, id, loopWithNext(await now(), 2)!, { at: 2, said: {} });
    expect((await now())[3]).toMatchObject({ joined: 'looped', path: { hitchPin: '3', note: 'bent' } });
    await keepAction(context, id, tie(await now(), 2)!, { at: 2, said: {} });
    expect((await now())[2]?.path?.hitchPin).toBeUndefined();
    expect(() => sayOfWire(strings[2]!, { ...form, hitchPin: '' }, 2)).toThrow(/first hitch pin is needed/);
  });

  test('can be unknown: somebody looked and could not tell', async () => {
    const { context, id, strings } = await board();
    await keepAction(context, id, notKnown(strings, 0)!, { at: 0, said: {} });
    const after = loopStrings(await readJob(context, id), 'tenor');
    expect(after[0]?.joined).toBe('unknown');
    // It may still be found out.
    expect(tapOn(after, 0, 1)).toMatchObject({ do: 'join' });
  });
});

test('a step is taken back whole, and nothing can be looped past the end of the section', async () => {
  const { context, id, strings } = await board();
  const step = await keepAction(context, id, loopOnFrom(strings, 0)!, { at: 3, said: {} });
  expect(step.at).toBe(3);
  await undoLoopStep(context, id, step, { otherwise: 'taken back' });
  const { entries } = await context.store.entries(id);
  expect(foldJob(entries).wirePaths).toEqual([]);
  expect(loopWithNext(strings, strings.length - 1)).toBeUndefined();
  expect(loopWithNext(strings, 2)?.next).toBe(4);
});
