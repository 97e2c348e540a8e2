import { foldHandOver, foldSettling, foldStringing, strungScale } from '@becket/journal';
import { beforeEach, describe, expect, it } from 'vitest';
import { entriesOf, readJob, type TaskContext } from '../context.ts';
import { noteRuns } from '../note-runs.ts';
import { recordReadings, withdrawEntry } from '../record-reading.ts';
import { chooseScale } from '../scale/scale-commands.ts';
import { planFollowUp, recordPass } from '../settle/settle-commands.ts';
import { putWireOn } from '../string/stringing-commands.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { settlingJob } from '../testing/settling-job.ts';
import { type HandOverToMake, handOver } from './hand-over-commands.ts';
import { handOverFigures } from './hand-over-figures.ts';
import { stillOpen } from './still-open.ts';

let context: TaskContext;
let id: string;
beforeEach(async () => {
  context = memoryContext();
  id = await settlingJob(context);
});

const toMake: HandOverToMake = {
  to: 'Ines Okafor',
  on: '2026-06-01',
  signedBy: 'Ada',
  cautions: ['The strings stretch for the first year.'],
  aftercare: { climate: '40 to 55 % relative humidity', tuneOn: ['2026-07-01'] },
  leftAlone: [{ what: 'The hard damper felt', because: 'not part of the order' }],
  isOpenAccepted: true,
};

async function openNow(): Promise<string[]> {
  const job = await readJob(context, id);
  const entries = await entriesOf(context, id);
  const settling = foldSettling(entries);
  return stillOpen(job, {
    stringing: foldStringing(entries),
    settling,
    scale: strungScale(job),
    today: '2026-06-01',
  }).map(({ sentence }) => sentence);
}

describe('what is still open', () => {
  it('is named: unknown, not measured, not finished', async () => {
    expect(await openNow()).toEqual([
      'The as-found record is not sealed.',
      'No scale was chosen: nothing says what was to be strung.',
      'Size or length is unknown: C#4 to G#4, A#4 to B4.',
      'The new wire was not measured: C4, A4.',
      'Pin torque was not read on the new strings: low, high.',
      'Bearing was not read on the new strings: low, high.',
      'No pass is recorded: where the pitch stands is unknown.',
    ]);
  });

  it('goes away with the reading, the pass and the follow-up that settle it', async () => {
    await recordReadings(context, id, [
      { quantity: 'wire-diameter', place: { key: 49 }, value: 1, unit: 'mm', stage: 'as strung' },
      { quantity: 'pin-torque', place: { key: 49, string: 1 }, value: 14, unit: 'N·m', stage: 'as strung' },
      {
        quantity: 'bearing-rise',
        place: { key: 41 },
        value: 0.6,
        unit: 'mm',
        stage: 'as strung',
        span_m: 0.1,
        loaded: true,
      },
    ]);
    await recordPass(context, id, {
      on: '2026-05-04',
      values: [{ value: 'after', section: 'low', offset_cents: 2 }],
    });
    await planFollowUp(context, id, { on: '2026-05-20', what: 'tuning' });
    const open = await openNow();
    expect(open).toContain('The new wire was not measured: C4.');
    expect(open).toContain('Pin torque was not read on the new strings: low.');
    expect(open).toContain('Bearing was not read on the new strings: high.');
    expect(open).toContain('Pass 1 is not finished: high.');
    expect(open).toContain('The follow-up of 20 May 2026 is not done.');
  });

  it('names notes that lack a wire once wires are noted', async () => {
    const sentence = 'Not every wire is noted as being on: C4 to B4.';
    expect(await openNow()).not.toContain(sentence);
    await putWireOn(context, id, {
      strings: [
        { key: 40, string: 1 },
        { key: 40, string: 2 },
      ],
    });
    expect(await openNow()).toContain(sentence);
    await putWireOn(context, id, { strings: [{ key: 40, string: 3 }] });
    expect(await openNow()).toContain('Not every wire is noted as being on: C#4 to B4.');
  });

  it('joins neighbouring notes', () => {
    expect(noteRuns([8, 1, 2, 3, 2, 10])).toBe('A0 to B0, E1, F#1');
    expect(noteRuns([])).toBe('');
  });
});

describe('the hand-over', () => {
  it('keeps what was open and what deviates as it stood, with the reason where there is one', async () => {
    await chooseScale(context, id, { scale: 'as found', reason: 'even as it is' });
    // 0.975 mm on A4 where 1 mm was chosen is more than the 0.01 mm that is let pass; 1.045 on C4 is not more than 0.01.
    await recordReadings(context, id, [
      { quantity: 'wire-diameter', place: { key: 49 }, value: 0.975, unit: 'mm', stage: 'as strung' },
      { quantity: 'wire-diameter', place: { key: 40 }, value: 1.045, unit: 'mm', stage: 'as strung' },
    ]);
    const what = 'A4, wire: 0.975 mm measured, 1.000 mm chosen.';
    const { handOver: made } = await handOver(context, id, {
      ...toMake,
      deviationReasons: { [what]: '1.000 mm was not to be had' },
    });
    expect(made.deviations).toEqual([{ what, because: '1.000 mm was not to be had' }]);
    expect(made.stillOpen).toContain('The as-found record is not sealed.');
    const figures = async () =>
      handOverFigures(await readJob(context, id), {
        entries: await entriesOf(context, id),
        today: '2026-06-01',
      });
    expect((await figures()).changedSince).toBeUndefined();
    await recordReadings(context, id, [
      { quantity: 'wire-diameter', place: { key: 49 }, value: 0.95, unit: 'mm', stage: 'as strung' },
    ]);
    const later = await figures();
    expect(later.changedSince).toContain('not those of the hand-over of 1 June 2026');
    expect(later.deviations[0]!.what).toBe(what);
  });

  it('is refused in one sentence, and nothing of it is stored', async () => {
    const count = (await entriesOf(context, id)).length;
    const refused: [Partial<HandOverToMake>, string][] = [
      [{ to: ' ' }, 'whoever takes it'],
      [{ signedBy: '' }, 'whoever answers for it'],
      [{ on: '1 June' }, '‘1 June’ was found'],
      [{ aftercare: { tuneOn: ['2026-05-01'] } }, '1 May 2026 was found'],
      [{ leftAlone: [{ what: 'The felt', because: '' }] }, '“The felt” has none'],
      [{ isOpenAccepted: false }, '7 things are still open'],
    ];
    for (const [change, sentence] of refused)
      await expect(handOver(context, id, { ...toMake, ...change })).rejects.toThrow(sentence);
    expect((await entriesOf(context, id)).length).toBe(count);
  });

  it('is made once, and again after it was taken back', async () => {
    const { handOver: made } = await handOver(context, id, toMake);
    await expect(handOver(context, id, toMake)).rejects.toThrow(
      'it was handed to Ines Okafor on 1 June 2026',
    );
    await withdrawEntry(context, id, made.entry, 'the wrong day');
    expect(foldHandOver(await entriesOf(context, id))).toBeUndefined();
    await handOver(context, id, { ...toMake, on: '2026-06-02' });
    expect(foldHandOver(await entriesOf(context, id))?.on).toBe('2026-06-02');
  });
});
