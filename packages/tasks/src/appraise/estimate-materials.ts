import { english, inMetres, type Language, metres, STEEL_DENSITY } from '@becket/core';
import { type AsFoundNote, asFoundRecord, type Job } from '@becket/journal';
import { pianoCounts } from './labour-steps.ts';

/** Wire of a plain string besides what was read of it: coils, becket, turn at the hitch pin. Our own starting figure. */
const COILS_AND_TURN = metres(0.15);
/** Front and back length together where they were read of no string at all. Our own starting figure. */
const UNREAD_ENDS = metres(0.2);
/** Wire cut off and spoilt, as a share. Our own starting figure. */
const WASTE = 0.1;

/** One material with its quantity; undefined where the job does not say enough. */
export interface MaterialQuantity {
  readonly id: string;
  readonly what: string;
  readonly unit: string;
  readonly quantity_thousandths: number | undefined;
  /** Where the quantity comes from. */
  readonly because: string;
}

/** Materials of a restringing with the quantities that the job gives. Spares and stock come with the order. */
export function materialQuantities(job: Job, language: Language = english): MaterialQuantity[] {
  const { say } = language;
  const { strings, woundStrings, assumed } = pianoCounts(job, language);
  const isDescribed = assumed.length === 0;
  return [
    {
      id: 'tuning-pins',
      what: say('Tuning pins'),
      unit: say('pins'),
      quantity_thousandths: strings * 1000,
      because: [say('one a string'), ...(isDescribed ? [] : [assumed.join(' ')])].join('; '),
    },
    plainWire(job, language),
    {
      id: 'bass-strings',
      what: say('Wound strings, made to order'),
      unit: say('strings'),
      quantity_thousandths: isDescribed ? woundStrings * 1000 : undefined,
      because: isDescribed
        ? say('strings described as wound')
        : say('the stringing is not all described, so that the wound strings cannot be counted'),
    },
    {
      id: 'felts',
      what: say('Stringing felt, braid and punchings'),
      unit: say('set'),
      quantity_thousandths: 1000,
      because: say('one set a piano'),
    },
  ];
}

/** Mass of the plain wire: of each note that was read, and the mean of those for each string that was not. */
function plainWire(job: Job, { say, plain: figure }: Language): MaterialQuantity {
  const line = { id: 'plain-wire', what: say('Plain wire'), unit: 'kg' };
  const plain = asFoundRecord(job).notes.filter(({ winding }) => winding === 'plain');
  const readEnds = plain.flatMap(({ figures }) => endsOf(figures) ?? []);
  const usualEnds =
    readEnds.length === 0
      ? inMetres(UNREAD_ENDS)
      : readEnds.reduce((sum, own) => sum + own, 0) / readEnds.length;
  let read = 0;
  let mass = 0;
  for (const { figures, strings = 0 } of plain) {
    const diameter = figures['wire-diameter'];
    const speaking = figures['speaking-length'];
    if (diameter === undefined || speaking === undefined) continue;
    const length = speaking.value + (endsOf(figures) ?? usualEnds) + inMetres(COILS_AND_TURN);
    mass += strings * length * STEEL_DENSITY * (Math.PI / 4) * diameter.value ** 2;
    read += strings;
  }
  const all = plain.reduce((sum, { strings = 0 }) => sum + strings, 0);
  if (read === 0 || pianoCounts(job).assumed.length > 0)
    return {
      ...line,
      quantity_thousandths: undefined,
      because:
        read === 0
          ? say('no note has both wire diameter and speaking length yet')
          : say('the stringing is not all described'),
    };
  const grams = Math.ceil(1000 * (mass / read) * all * (1 + WASTE));
  return {
    ...line,
    quantity_thousandths: grams,
    because: say(
      'diameters and lengths of {strings} plain strings{unread, plural, =0 {} other {; # of them not read and taken as the mean}}, with ends, coils and {waste} % waste (our own starting figures)',
      { strings: all, unread: all - read, waste: figure(WASTE * 100) },
    ),
  };
}

/** Front and back length of a note together, when both were read. */
function endsOf({ 'front-length': front, 'back-length': back }: AsFoundNote['figures']): number | undefined {
  return front === undefined || back === undefined ? undefined : front.value + back.value;
}
