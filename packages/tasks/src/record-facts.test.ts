import { describe, expect, it } from 'vitest';
import { RecordIsSealed, readJob } from './context.ts';
import { openDemoJob } from './demo/open-demo-job.ts';
import { changeOrderTotals, recordDamage } from './found-after-strip.ts';
import { type FactToRecord, recordFacts } from './record-facts.ts';
import { memoryContext } from './testing/memory-context.ts';
import { sealAsItStands } from './testing/seal-as-it-stands.ts';

const stamp: FactToRecord = {
  kind: 'size-stamp',
  key: 49,
  on: 'bridge',
  text: '16',
  lattice: 'US',
  says: 'starts here',
};
const felt = (section: string): FactToRecord => ({
  kind: 'soft-part',
  part: 'felt',
  section,
  answer: { is: 'known', thickness_m: 0.003, colour: 'green' },
});

async function demo() {
  const context = memoryContext();
  const { id, entryCount } = await openDemoJob(context);
  return { context, id, entryCount };
}

describe('recordFacts()', () => {
  it('keeps one of each kind, in the order they are given', async () => {
    const { context, id } = await demo();
    const { job, entries } = await recordFacts(context, id, [
      stamp,
      { kind: 'winding-described', key: 1, loopStyle: 'single loop', twist: 'right' },
      {
        kind: 'wire-path',
        strings: [
          { key: 40, string: 3 },
          { key: 41, string: 1 },
        ],
        joined: 'looped',
      },
      felt('tenor'),
      {
        kind: 'plate-part',
        part: 'bar 1',
        section: 'tenor',
        isMovable: true,
        distances: [{ from: 'the strut', distance_m: 0.04 }],
      },
      { kind: 'sample-kept', what: 'wire of string 1', place: { key: 49, string: 1 }, label: 'A' },
    ]);
    expect(entries).toHaveLength(6);
    expect([
      job.sizeStamps.length,
      job.windings.length,
      job.wirePaths.length,
      job.softParts.length,
      job.plateParts.length,
      job.samples.length,
    ]).toEqual([1, 1, 1, 1, 1, 1]);
  });

  it.each<[string, FactToRecord, string]>([
    [
      'a winding of a plain note',
      { kind: 'winding-described', key: 49, loopStyle: 'other', twist: 'left' },
      'A4 is described as plain',
    ],
    [
      'a string that is not there',
      { kind: 'wire-path', strings: [{ key: 1, string: 2 }], joined: 'tied' },
      'a string from 1 to 1 of A0 is needed, string 2',
    ],
    [
      'one string twice',
      {
        kind: 'wire-path',
        strings: [
          { key: 49, string: 2 },
          { key: 49, string: 2 },
        ],
        joined: 'looped',
      },
      'A4 string 2 was found twice',
    ],
    ['a section that is not there', felt('attic'), "'attic' was found"],
  ])('refuses %s, and keeps nothing of the batch', async (_, wrong, words) => {
    const { context, id, entryCount } = await demo();
    await expect(recordFacts(context, id, [stamp, wrong])).rejects.toThrow(words);
    expect((await readJob(context, id)).entryCount).toBe(entryCount);
  });

  it('wants a reason once the record is sealed, and notes the amendment', async () => {
    const { context, id } = await demo();
    await sealAsItStands(context, id);
    await expect(recordFacts(context, id, [stamp])).rejects.toThrow(RecordIsSealed);
    const { job } = await recordFacts(context, id, [{ ...stamp, reason: 'seen under the dust' }]);
    expect(job.amendments.map(({ reason }) => reason)).toEqual(['seen under the dust']);
  });
});

describe('recordDamage()', () => {
  const damage = {
    place: { section: 'bass' },
    what: 'a crack in the bridge cap',
    gravity: 'mend before stringing',
    whatToDo: 'recap the bridge',
    reason: 'it lay under the strings',
  } as const;

  it('waits for the seal, and then keeps lines of a change order that can be summed', async () => {
    const { context, id } = await demo();
    await expect(recordDamage(context, id, damage)).rejects.toThrow('it is not sealed yet');
    await sealAsItStands(context, id);
    await recordDamage(context, id, { ...damage, priceMinorUnits: 45000, currency: 'EUR', days: 3 });
    await recordDamage(context, id, { ...damage, priceMinorUnits: 5050, currency: 'EUR', days: 0.5 });
    const job = await recordDamage(context, id, damage);
    expect(changeOrderTotals(job.damages)).toEqual({
      prices: [{ currency: 'EUR', minorUnits: 50050 }],
      days: 3.5,
      withoutPrice: 1,
      withoutDays: 1,
    });
  });

  it('refuses a place or a photo that is not of this job, and a price without its currency', async () => {
    const { context, id } = await demo();
    await sealAsItStands(context, id);
    await expect(recordDamage(context, id, { ...damage, place: { section: 'attic' } })).rejects.toThrow(
      'attic',
    );
    await expect(recordDamage(context, id, { ...damage, photo: 'b'.repeat(64) })).rejects.toThrow(
      'photo of this job',
    );
    await expect(recordDamage(context, id, { ...damage, priceMinorUnits: 1 })).rejects.toThrow('currency');
    expect((await readJob(context, id)).damages).toEqual([]);
  });
});
