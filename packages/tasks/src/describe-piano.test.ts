import { describe, expect, it } from 'vitest';
import { RecordIsSealed, readJob } from './context.ts';
import { describePiano, describeSections, describeUnisons } from './describe-piano.ts';
import { correctOpening, openJob } from './open-job.ts';
import { recordFacts } from './record-facts.ts';
import { recordReadings, takeBackEntry } from './record-reading.ts';
import { memoryContext } from './testing/memory-context.ts';
import { sealAsItStands } from './testing/seal-as-it-stands.ts';

const upright = { form: 'vertical', firstKey: 1, lastKey: 85, referencePitch_hz: 435 } as const;
const treble = {
  section: 'treble',
  firstKey: 64,
  lastKey: 85,
  bridge: 'long',
  frontTermination: 'pressure bar',
} as const;

async function start() {
  const context = memoryContext();
  const { id } = await openJob(context, { title: 'an old upright', piano: upright });
  return { context, id };
}

describe('the compass of a piano', () => {
  it('is not cut under a section or under a reading, and can be where nothing is', async () => {
    const { context, id } = await start();
    await describeSections(context, id, [treble]);
    await expect(describePiano(context, id, { ...upright, lastKey: 76 })).rejects.toThrow(
      "Cannot keep the compass A0 to C7: it must hold every section, and the section 'treble' goes from C6 to A7.",
    );
    await describeSections(context, id, [{ ...treble, lastKey: 76 }]);
    const { entries } = await recordReadings(context, id, [
      { quantity: 'speaking-length', place: { key: 85 }, value: 55, unit: 'mm' },
    ]);
    await expect(describePiano(context, id, { ...upright, lastKey: 76 })).rejects.toThrow(
      '1 lies outside, such as at A7',
    );
    await takeBackEntry(context, id, entries[0]!, { otherwise: 'not of this piano' });
    expect((await describePiano(context, id, { ...upright, lastKey: 76 })).piano?.lastKey).toBe(76);
  });

  it('is spoken of in notes', async () => {
    const { context, id } = await start();
    await expect(describeSections(context, id, [{ ...treble, lastKey: 88 }])).rejects.toThrow(
      "Cannot keep section 'treble' as it leaves the compass: A0 to A7 is needed, C6 to C8 was found.",
    );
    const run = { strings: 3, winding: 'plain', layers: 0 } as const;
    await expect(describeUnisons(context, id, [{ ...run, firstKey: 80, lastKey: 88 }])).rejects.toThrow(
      'Cannot keep the notes E7 to C8 as it leaves the compass',
    );
  });
});

describe('after the seal', () => {
  it('what the piano is needs a reason to be changed, and the amendment carries it', async () => {
    const { context, id } = await start();
    await sealAsItStands(context, id);
    await expect(describePiano(context, id, { ...upright, year: 1905 })).rejects.toThrow(RecordIsSealed);
    await describePiano(context, id, { ...upright, year: 1905, reason: 'the number on the plate' });
    const job = await readJob(context, id);
    expect(job.piano?.year).toBe(1905);
    expect(job.amendments).toMatchObject([{ kind: 'piano-described', reason: 'the number on the plate' }]);
  });

  it('a fact of the record is taken back for a reason that somebody gave, and for no other', async () => {
    const { context, id } = await start();
    const sample = { kind: 'sample-kept', what: 'wire', label: 'B1', place: {} } as const;
    const { entries } = await recordFacts(context, id, [sample]);
    await sealAsItStands(context, id);
    const takeBack = (reason: string) =>
      takeBackEntry(context, id, entries[0]!, { reason, otherwise: 'taken back while recording' });
    await expect(takeBack(' ')).rejects.toThrow('a reason is needed');
    expect((await readJob(context, id)).samples).toHaveLength(1);
    const lost = await takeBack('the bag was lost');
    expect(lost.amendments).toMatchObject([{ reason: 'the bag was lost' }]);
    // To bring it back changes the record as well.
    const undo = (reason: string) =>
      takeBackEntry(context, id, lost.amendments[0]!.entry, { reason, otherwise: 'undone' });
    await expect(undo('')).rejects.toThrow('a reason is needed');
    expect((await undo('the bag was found')).amendments).toMatchObject([{ reason: 'the bag was found' }]);
    // The moment as a person reads it.
    await expect(takeBack('')).rejects.toThrow(/sealed on \d+ \w+ \d{4}, \d\d:\d\d UTC: a reason/);
  });
});

it('the title, the customer and her question are put right, and the day the job was opened stays', async () => {
  const context = memoryContext();
  const opened = await openJob(context, { title: 'upright', customer: 'Mrs Furn', asks: 'Will it hold?' });
  expect(opened).toMatchObject({ title: 'upright', customer: 'Mrs Furn', asks: 'Will it hold?' });
  const asks = 'Will it hold its pitch, and what does it cost?';
  const head = { title: 'Old upright', customer: 'Mrs Fern', asks };
  const job = await correctOpening(context, opened.id, head);
  expect(job).toMatchObject({ ...head, openedAt: opened.openedAt, id: opened.id });
});

it('a text that is too long is refused as that, in the words of who typed it', async () => {
  const { context, id } = await start();
  await describeSections(context, id, [treble]);
  const colour = 'red, and green where the moths were, and brown under the bar, and grey elsewhere';
  const felt = { kind: 'soft-part', part: 'felt', section: 'treble' } as const;
  await expect(recordFacts(context, id, [{ ...felt, answer: { is: 'known', colour } }])).rejects.toThrow(
    "Cannot keep this: a text of at most 60 characters is needed, one of 80 was found: 'red, and green where the moths …'. Shorten it.",
  );
  expect((await readJob(context, id)).softParts).toEqual([]);
});
