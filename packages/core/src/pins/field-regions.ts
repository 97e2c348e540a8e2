import { noteName } from '../units/index.ts';
import type { Language } from '../words/index.ts';

/** A part of the field in which low pins may gather. */
export interface FieldRegion {
  readonly kind: 'one section' | 'along the flange' | 'a line inside the field';
  /** Indices into the pins that were read. */
  readonly pins: readonly number[];
  /** 'in the section tenor', 'beside the strut at E3 and F3' */
  readonly where: string;
  readonly firstKey: number;
  readonly lastKey: number;
  /** Which string of each unison, where the region is a single row. */
  readonly row: number | undefined;
  /** Logarithm of how many regions of the kind were tried: what looking at many costs. */
  readonly price: number;
}

/** A region that is tried. Thousands are, so only the one that is told of says where it is. */
export interface TriedRegion extends Omit<FieldRegion, 'where'> {
  readonly whereIn: (language: Language) => string;
}

interface ReadPin {
  readonly key: number;
  readonly string: number | undefined;
}
interface SectionKeys {
  readonly section: string;
  readonly firstKey: number;
  readonly lastKey: number;
}
type Unpriced = Omit<TriedRegion, 'price'>;

/** Notes on either side of a strut that count as beside it. Our own figures. */
const EDGE_NOTES = [1, 2, 3] as const;

/**
 * The parts of a field worth looking at: each section; the ends of sections, each strut for itself and all together, one to
 * three notes wide; and runs of neighbouring pins, in the whole field and in each row, 2 to half of the pins long in steps of
 * about √2.
 */
export function regionsOfField(pins: readonly ReadPin[], sections: readonly SectionKeys[]): TriedRegion[] {
  return [sectionRegions(pins, sections), flangeRegions(pins, sections), lineRegions(pins)].flatMap(
    (kind): TriedRegion[] => {
      const some = kind.filter((region) => region.pins.length > 0 && region.pins.length < pins.length);
      return some.map((region) => ({ ...region, price: Math.log(some.length) }));
    },
  );
}

function sectionRegions(pins: readonly ReadPin[], sections: readonly SectionKeys[]): Unpriced[] {
  return sections.map(({ section, firstKey, lastKey }) => ({
    kind: 'one section',
    pins: indices(pins, ({ key }) => firstKey <= key && key <= lastKey),
    whereIn: ({ say }) => say('in the section {section}', { section }),
    firstKey,
    lastKey,
    row: undefined,
  }));
}

function flangeRegions(pins: readonly ReadPin[], sections: readonly SectionKeys[]): Unpriced[] {
  if (sections.length === 0) return [];
  return EDGE_NOTES.flatMap((width) => {
    const isAtEnd = ({ firstKey, lastKey }: SectionKeys, key: number) =>
      firstKey <= key && key <= lastKey && (key < firstKey + width || key > lastKey - width);
    const all: Unpriced = {
      kind: 'along the flange',
      pins: indices(pins, ({ key }) => sections.some((one) => isAtEnd(one, key))),
      whereIn: ({ say }) =>
        say(
          'in the {width, plural, =1 {last note} other {last # notes}} at the ends of the sections, beside the struts',
          { width },
        ),
      firstKey: sections[0]!.firstKey,
      lastKey: sections.at(-1)!.lastKey,
      row: undefined,
    };
    const struts = sections.slice(1).map((right, index): Unpriced => {
      const left = sections[index]!;
      return {
        kind: 'along the flange',
        pins: indices(
          pins,
          ({ key }) =>
            (key > left.lastKey - width && key <= left.lastKey) ||
            (key >= right.firstKey && key < right.firstKey + width),
        ),
        whereIn: ({ say }) =>
          say('beside the strut between {lower} and {upper}', {
            lower: noteName(left.lastKey),
            upper: noteName(right.firstKey),
          }),
        firstKey: left.lastKey - width + 1,
        lastKey: right.firstKey + width - 1,
        row: undefined,
      };
    });
    return [all, ...struts];
  });
}

function lineRegions(pins: readonly ReadPin[]): Unpriced[] {
  const rows = [undefined, 1, 2, 3] as const;
  return rows.flatMap((row) => {
    const own = indices(pins, ({ string }) => row === undefined || string === row);
    if (row !== undefined && own.length === pins.length) return [];
    const whole = row === undefined ? [] : [own];
    const runs = runLengths(Math.floor(pins.length / 2)).flatMap((length) =>
      Array.from({ length: Math.max(0, own.length - length + 1) }, (_, start) =>
        own.slice(start, start + length),
      ),
    );
    return [...whole, ...runs].flatMap((run): Unpriced[] => {
      if (run.length === 0) return [];
      const [firstKey, lastKey] = [pins[run[0]!]!.key, pins[run.at(-1)!]!.key];
      return [
        {
          kind: 'a line inside the field',
          pins: run,
          whereIn: ({ say }) => {
            const span =
              firstKey === lastKey
                ? say('at {note}', { note: noteName(firstKey) })
                : say('from {first} to {last}', { first: noteName(firstKey), last: noteName(lastKey) });
            return row === undefined ? span : say('in the row of string {row} {span}', { row, span });
          },
          firstKey,
          lastKey,
          row,
        },
      ];
    });
  });
}

function runLengths(longest: number): number[] {
  const lengths: number[] = [];
  for (let length = 2; length <= longest; length = Math.ceil(length * Math.SQRT2)) lengths.push(length);
  return lengths;
}

function indices(pins: readonly ReadPin[], isIn: (pin: ReadPin) => boolean): number[] {
  return pins.flatMap((pin, index) => (isIn(pin) ? [index] : []));
}
