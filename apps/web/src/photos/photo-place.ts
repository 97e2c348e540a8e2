import { english, type Language, noteName } from '@becket/core';
import type { FactOf, Place, Standing } from '@becket/journal';

export type Photo = Standing<FactOf<'photo'>>;

/** The place of a photo in words. */
export function placeWords({ key, string, section }: Place, { say }: Language = english): string {
  if (key !== undefined)
    return string === undefined
      ? say('note {note}', { note: noteName(key) })
      : say('note {note}, string {string}', { note: noteName(key), string });
  return section === undefined ? say('the whole piano') : say('section {section}', { section });
}

/** What a photo shows, where it is not the piano as found; and its place. */
export function whereWords(
  { place, stage }: Pick<Photo, 'place' | 'stage'>,
  language: Language = english,
): string {
  const where = placeWords(place, language);
  return stage === undefined || stage === 'as found' ? where : `${where}, ${language.say(stage)}`;
}

/** Whether a change of this photo, or to this stage, amends the record once it is sealed. */
export const isOfRecord = ({ stage = 'as found' }: Pick<Photo, 'stage'>): boolean => stage === 'as found';

/** Photos of a note: its own first, then those of its section. */
export function photosOfNote(
  photos: readonly Photo[],
  { key, section }: { readonly key: number; readonly section: string | undefined },
): Photo[] {
  const own = photos.filter(({ place }) => place.key === key);
  const around = photos.filter(
    ({ place }) => place.key === undefined && section !== undefined && place.section === section,
  );
  return [...own, ...around];
}

/** Photos of a section itself, or of the whole piano without one: as found, not of what came after. */
export const photosOfPlace = (photos: readonly Photo[], section: string | undefined): Photo[] =>
  photos.filter(
    (photo) => isOfRecord(photo) && photo.place.key === undefined && photo.place.section === section,
  );

/** The part of Record's address that shows one photo. */
export const photoPart = (digest: string): string => `photo-${digest}`;
export const digestOfPart = (part: string | undefined): string | undefined =>
  /^photo-([0-9a-f]{64})$/.exec(part ?? '')?.[1];
