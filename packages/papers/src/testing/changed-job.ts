import { digestOf, type Entry, type Fact, type FactOf, foldJob, type Job } from '@becket/journal';
import { jpegWith, tinyJpeg } from '../../../journal/src/testing/tiny-jpeg.ts';
import { smallJournal } from './small-job.ts';

/*
 * The small piano after its strip, with what came to light then: priced and not priced, in two currencies, at places of
 * every kind, with and without a photo.
 */

/** Two pictures that differ, and one that nobody has. */
export const changePhotos: readonly Uint8Array[] = [1, 2].map((number) =>
  jpegWith([{ marker: 0xe2, content: Uint8Array.of(number) }], tinyJpeg),
);
const lostDigest = 'c'.repeat(64);

/** The bytes of its photos, by digest. */
export const changePhotoBytes = (digest: string): Uint8Array | undefined =>
  changePhotos.find((bytes) => digestOf(bytes) === digest);

const idOf = (number: number): string => `01SMB${String(number).padStart(21, '0')}`;

/** Marks of every kind; the scale bar is 0.1 m long and half as long as the other length. */
const marks: FactOf<'photo'>['marks'] = [
  { mark: 'arrow', from: { x: 0.2, y: 0.2 }, to: { x: 0.5, y: 0.45 }, text: 'begins here' },
  { mark: 'label', at: { x: 0.75, y: 0.3 }, text: 'cap lifts' },
  { mark: 'distance', from: { x: 0.1, y: 0.9 }, to: { x: 0.4, y: 0.9 }, known_m: 0.1 },
  { mark: 'distance', from: { x: 0.2, y: 0.7 }, to: { x: 0.8, y: 0.7 } },
];

export interface ChangedJobOptions {
  /** Whether the customer has answered the first two lines. */
  readonly isAnswered?: boolean;
}

export function changedJournal({ isAnswered = false }: ChangedJobOptions = {}): Entry[] {
  const entries = smallJournal({ sealed: true });
  const first = entries[0]!;
  const before = entries.length;
  const add = (fact: Fact): string => {
    const number = entries.length - before;
    const step = entries.at(-1)!.step + 1;
    const at = `2026-03-08T0${8 + (number % 2)}:00:00.000Z`;
    const entry = { id: idOf(number), job: first.job, step, at, by: 'Bo', device: 'bench tablet' };
    entries.push({ ...entry, fact });
    return entry.id;
  };
  const photo = (digest: string, more: Partial<FactOf<'photo'>>): Fact => ({
    kind: 'photo',
    v: 1,
    digest,
    mediaType: 'image/jpeg',
    bytes: 400,
    width: 1200,
    height: 800,
    place: {},
    marks: [],
    stage: 'after the strip',
    ...more,
  });
  const [cracked, loose] = changePhotos.map(digestOf);
  add(photo(cracked!, { place: { section: 'bass' }, shows: 'the bass bridge cap from above', marks }));
  add(photo(loose!, { place: { key: 28, string: 2 } }));
  add(photo(lostDigest, { place: { point: 'behind the pressure bar' }, shows: 'the plate web' }));
  const damages = [
    add({
      kind: 'damage-found',
      v: 1,
      place: { section: 'bass', point: 'along the front row of bridge pins' },
      what: 'Crack in the bridge cap over five notes',
      gravity: 'mend before stringing',
      whatToDo: 'New cap over the whole section, pinned to the old holes',
      reason: 'It lay under the strings, and closed under their load',
      priceMinorUnits: 45_050,
      currency: 'EUR',
      days: 3,
      photo: cracked!,
    }),
    add({
      kind: 'damage-found',
      v: 1,
      place: { key: 28, string: 2 },
      what: 'Bridge pin loose in its hole',
      gravity: 'keep an eye on it',
      whatToDo: 'Set in with thin glue',
      reason: 'It was held by the string',
      priceMinorUnits: 0,
      currency: 'EUR',
      days: 0.5,
      photo: loose!,
    }),
    add({
      kind: 'damage-found',
      v: 1,
      place: { point: 'second web from the left' },
      what: 'Hairline in the plate',
      gravity: 'stop the work',
      whatToDo: 'Have it looked at by a specialist for plates',
      reason: 'It was under the stringing felt',
      photo: lostDigest,
    }),
  ];
  add({
    kind: 'damage-found',
    v: 1,
    place: { section: 'tenor' },
    what: 'Stringing felt moth-eaten',
    gravity: 'mend before stringing',
    whatToDo: 'New felt, ordered abroad',
    reason: 'Only the upper side could be seen',
    priceMinorUnits: 1200,
    currency: 'JPY',
  });
  if (isAnswered) {
    const answer = (damage: string, said: 'agreed' | 'declined', note?: string): Fact => ({
      kind: 'change-answered',
      v: 1,
      damage,
      answer: said,
      name: 'Ines Okafor',
      on: '2026-03-09',
      ...(note === undefined ? {} : { note }),
    });
    add(answer(damages[0]!, 'agreed', 'please keep the old cap for me'));
    add(answer(damages[1]!, 'declined'));
  }
  return entries;
}

export const changedJob = (options: ChangedJobOptions = {}): Job => foldJob(changedJournal(options));
