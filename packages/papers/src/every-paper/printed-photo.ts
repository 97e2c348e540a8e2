import type { Language, LengthUnit } from '@becket/core';
import { type FactOf, type PhotoMark, type PhotoScale, photoScale, type Standing } from '@becket/journal';
import { lengthInWords, lengthText } from '../figures/lengths.ts';
import type { Photos, PrintedMark, PrintedPhoto } from '../page-tree.ts';
import { placeInWords } from './place-in-words.ts';
import { shortDigest } from './running-lines.ts';

type Photo = Standing<FactOf<'photo'>>;

/** Beyond this the scale bars of a photo contradict each other: they do not lie in one plane that faces the camera. */
const worstDisagreement = 0.05;

/** Photos as a part of a paper, with what is to be said where one cannot be shown. */
export const photosBlock = (photos: readonly PrintedPhoto[], { say }: Language): Photos => ({
  is: 'photos',
  photos,
  ifMissing: say(
    'This photo was not where the paper was made, or is damaged there. Make the paper again where it is.',
  ),
  ifUnreadable: say(
    'This photo cannot be printed: a whole JPEG is needed, something else is kept under its name.',
  ),
});

/** A photo as papers show it: what, where, when, by which name it is found again, and its marks with their lengths. */
export function printedPhoto(photo: Photo, unit: LengthUnit, language: Language): PrintedPhoto {
  const { say, day } = language;
  const { digest, shows, place, at, by, marks } = photo;
  const scale = photoScale(photo);
  return {
    digest,
    title: shows ?? say('nothing said of what it shows'),
    lines: [
      placeInWords(place, language),
      say('kept {day} by {name}; digest {digest}', {
        day: day(at),
        name: by,
        digest: shortDigest(digest),
      }),
      ...lengthsInWords(scale, unit, language),
    ],
    marks: marks.map((mark, index) => printedMark(mark, lengthWords(scale, index, unit, language))),
  };
}

function printedMark(mark: PhotoMark, length: string): PrintedMark {
  switch (mark.mark) {
    case 'arrow':
      return { mark: 'arrow', from: mark.from, to: mark.to, words: mark.text ?? '' };
    case 'label':
      return { mark: 'label', at: mark.at, words: mark.text };
    case 'distance':
      return {
        mark: mark.known_m === undefined ? 'distance' : 'scale bar',
        from: mark.from,
        to: mark.to,
        words: length,
      };
  }
}

const lengthOf = (scale: PhotoScale | undefined, index: number) =>
  scale?.distances.find(({ mark }) => mark === index);

/** Beside a line on the picture: short, in the unit that stands first. */
function lengthWords(
  scale: PhotoScale | undefined,
  index: number,
  unit: LengthUnit,
  language: Language,
): string {
  const length = lengthOf(scale, index);
  if (length === undefined) return language.say('no scale');
  const text = `${lengthText(length.length_m, unit, 'length', language)} ${unit}`;
  return length.origin === 'measured' ? text : `≈ ${text}`;
}

/** Under the picture: every length in both units, with what it rests on. */
function lengthsInWords(scale: PhotoScale | undefined, unit: LengthUnit, language: Language): string[] {
  const { say } = language;
  if (scale === undefined) return [];
  const { distances, disagreement } = scale;
  const lines = distances.map(({ length_m, standardUncertainty_m, origin }) => {
    const length = lengthInWords(length_m, 'length', unit, language);
    return origin === 'measured' || standardUncertainty_m === undefined
      ? say('scale bar: {length}, measured on the piano', { length })
      : say('≈ {length}, u = {uncertainty}, off the scale bar', {
          length,
          uncertainty: `${lengthText(standardUncertainty_m, unit, 'length', language)} ${unit}`,
        });
  });
  if (distances.some(({ origin }) => origin !== 'measured'))
    lines.push(say('A length off the scale bar holds only in the plane of the bar, seen from the front.'));
  if (disagreement !== undefined && disagreement > worstDisagreement)
    lines.push(
      say('The scale bars disagree by {percent} %: measure on the piano instead.', {
        percent: String(Math.round(100 * disagreement)),
      }),
    );
  return lines;
}
