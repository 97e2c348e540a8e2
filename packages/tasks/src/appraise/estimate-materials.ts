import { inMetres, metres, STEEL_DENSITY } from '@becket/core';
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
export function materialQuantities(job: Job): MaterialQuantity[] {
  const { strings, woundStrings, assumed } = pianoCounts(job);
  const isDescribed = assumed.length === 0;
  return [
    {
      id: 'tuning-pins',
      what: 'Tuning pins',
      unit: 'pins',
      quantity_thousandths: strings * 1000,
      because: `one a string${isDescribed ? '' : `; ${assumed.join(' ')}`}`,
    },
    plainWire(job),
    {
      id: 'bass-strings',
      what: 'Wound strings, made to order',
      unit: 'strings',
      quantity_thousandths: isDescribed ? woundStrings * 1000 : undefined,
      because: isDescribed
        ? 'strings described as wound'
        : 'the stringing is not all described, so that the wound strings cannot be counted',
    },
    {
      id: 'felts',
      what: 'Stringing felt, braid and punchings',
      unit: 'set',
      quantity_thousandths: 1000,
      because: 'one set a piano',
    },
  ];
}

/** Mass of the plain wire: of each note that was read, and the mean of those for each string that was not. */
function plainWire(job: Job): MaterialQuantity {
  const line = { id: 'plain-wire', what: 'Plain wire', unit: 'kg' };
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
          ? 'no note has both wire diameter and speaking length yet'
          : 'the stringing is not all described',
    };
  const grams = Math.ceil(1000 * (mass / read) * all * (1 + WASTE));
  const unread = all === read ? '' : `; ${all - read} of them not read and taken as the mean`;
  return {
    ...line,
    quantity_thousandths: grams,
    because: `diameters and lengths of ${all} plain strings${unread}, with ends, coils and ${WASTE * 100} % waste (our own starting figures)`,
  };
}

/** Front and back length of a note together, when both were read. */
function endsOf({ 'front-length': front, 'back-length': back }: AsFoundNote['figures']): number | undefined {
  return front === undefined || back === undefined ? undefined : front.value + back.value;
}
