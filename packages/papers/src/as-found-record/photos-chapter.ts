import type { Language, LengthUnit } from '@becket/core';
import { isAsFoundFact, type Job } from '@becket/journal';
import { photosBlock, printedPhoto } from '../every-paper/printed-photo.ts';
import type { Block } from '../page-tree.ts';
import { isInSection } from './section-chapter.ts';

type Photo = Job['photos'][number];

/** The photos of the piano as found, section by section: those that belong to a place or are marked. */
export function photosChapter(job: Job, unit: LengthUnit, language: Language): Block[] {
  const { say } = language;
  const asFound = job.photos.filter(isAsFoundFact);
  const shown = asFound.filter((photo) => photo.marks.length > 0 || isPlaced(photo));
  if (asFound.length === 0) return [];
  const inSections = job.sections.map((section) => ({
    title: say('Photos of section {section}', { section: section.section }),
    photos: shown.filter(({ place }) => isInSection(place, section)),
  }));
  const placed = new Set(inSections.flatMap(({ photos }) => photos));
  const groups = [
    ...inSections,
    { title: say('Photos of no section'), photos: shown.filter((photo) => !placed.has(photo)) },
  ].filter(({ photos }) => photos.length > 0);
  const others = asFound.length - shown.length;
  return [
    { is: 'page break' },
    { is: 'heading', level: 2, text: say('Photos') },
    {
      is: 'paragraph',
      tone: 'quiet',
      text: [
        say(
          'Each photo is named by the beginning of its digest, under which the job keeps it in full size. Marks were drawn on afterwards; the picture under them is as it was taken.',
        ),
        ...(others === 0
          ? []
          : [
              say(
                '{count, plural, one {# further photo has neither a place nor a mark; the job keeps it, and this paper does not show it.} other {# further photos have neither a place nor a mark; the job keeps them, and this paper does not show them.}}',
                { count: others },
              ),
            ]),
      ].join(' '),
    },
    ...groups.flatMap(({ title, photos }): Block[] => [
      { is: 'heading', level: 3, text: title },
      photosBlock(
        [...photos].sort(alongTheCompass).map((photo) => printedPhoto(photo, unit, language)),
        language,
      ),
    ]),
  ];
}

const isPlaced = ({ place: { section, key, string, point } }: Photo): boolean =>
  section !== undefined || key !== undefined || string !== undefined || point !== undefined;

/** By note, those of no note first; of one note as they came. */
const alongTheCompass = (a: Photo, b: Photo): number => (a.place.key ?? 0) - (b.place.key ?? 0);
