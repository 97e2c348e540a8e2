import { type FactOf, type PhotoMark, type PhotoScale, photoScale, type Standing } from '@becket/journal';
import { dayInWords } from '../figures/dates.ts';
import { type LengthUnit, lengthInWords, lengthText } from '../figures/lengths.ts';
import type { PrintedMark, PrintedPhoto } from '../page-tree.ts';
import { placeInWords } from './place-in-words.ts';
import { shortDigest } from './running-lines.ts';

type Photo = Standing<FactOf<'photo'>>;

/** Beyond this the scale bars of a photo contradict each other: they do not lie in one plane that faces the camera. */
const worstDisagreement = 0.05;

/** A photo as papers show it: what, where, when, by which name it is found again, and its marks with their lengths. */
export function printedPhoto(photo: Photo, unit: LengthUnit): PrintedPhoto {
  const { digest, shows, place, at, by, marks } = photo;
  const scale = photoScale(photo);
  return {
    digest,
    title: shows ?? 'nothing said of what it shows',
    lines: [
      placeInWords(place),
      `kept ${dayInWords(at)} by ${by}; digest ${shortDigest(digest)}`,
      ...lengthsInWords(scale, unit),
    ],
    marks: marks.map((mark, index) => printedMark(mark, lengthWords(scale, index, unit))),
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
function lengthWords(scale: PhotoScale | undefined, index: number, unit: LengthUnit): string {
  const length = lengthOf(scale, index);
  if (length === undefined) return 'no scale';
  const text = `${lengthText(length.length_m, unit, 'length')} ${unit}`;
  return length.origin === 'measured' ? text : `≈ ${text}`;
}

/** Under the picture: every length in both units, with what it rests on. */
function lengthsInWords(scale: PhotoScale | undefined, unit: LengthUnit): string[] {
  if (scale === undefined) return [];
  const { distances, disagreement } = scale;
  const lines = distances.map(({ length_m, standardUncertainty_m, origin }) => {
    const length = lengthInWords(length_m, 'length', unit);
    return origin === 'measured' || standardUncertainty_m === undefined
      ? `scale bar: ${length}, measured on the piano`
      : `≈ ${length}, u = ${lengthText(standardUncertainty_m, unit, 'length')} ${unit}, off the scale bar`;
  });
  if (distances.some(({ origin }) => origin !== 'measured'))
    lines.push('A length off the scale bar holds only in the plane of the bar, seen from the front.');
  if (disagreement !== undefined && disagreement > worstDisagreement)
    lines.push(
      `The scale bars disagree by ${Math.round(100 * disagreement)} %: measure on the piano instead.`,
    );
  return lines;
}
