import { noteName } from '@becket/core';
import type { StringPlace } from '../facts/wire-path.ts';
import type { Job } from '../fold/job.ts';
import { asFoundRecord } from './as-found-record.ts';

/** Something about the wires of a section that wants a second look. */
export interface LoopQuestion {
  readonly kind:
    | 'string without a wire'
    | 'odd count without a tie'
    | 'loop between strings that are not neighbours'
    | 'loop across two sections'
    | 'one wire, two sizes'
    | 'hitch pin with two wires'
    | 'string that is not there';
  readonly strings: readonly StringPlace[];
  readonly section: string | undefined;
  readonly sentence: string;
}

export interface LoopMap {
  readonly section: string;
  readonly strings: number;
  readonly looped: number;
  readonly tied: number;
  /** Strings whose wire nobody has said yet. */
  readonly unsaid: readonly StringPlace[];
}

/** Two readings of one wire may differ by wear and by hand; half a size step is more than that. Common practice, no source. */
const ONE_WIRE_TOLERANCE_M = 12.7e-6;

/**
 * Which strings share a wire, section by section, and what does not add up.
 *
 * A looped wire serves two neighbouring strings of one section; an odd count of strings in a section forces at least
 * one tied wire; a hitch pin carries one wire; both strings of one wire have one size. What breaks these rules is a
 * slip of the pen or a predecessor's repair: it is asked about, never forbidden.
 */
export function loopMap(job: Job): {
  readonly sections: readonly LoopMap[];
  readonly questions: readonly LoopQuestion[];
} {
  const order = stringsInOrder(job);
  const place = new Map(order.map((string, index) => [nameOf(string), index]));
  const questions: LoopQuestion[] = [];
  const said = new Map<string, 'looped' | 'tied' | 'unknown'>();
  const hitchPins = new Map<string, StringPlace[]>();
  const diameters = new Map(
    asFoundRecord(job).notes.map((note) => [
      note.key,
      (note.figures['wire-diameter'] ?? note.figures['core-diameter'])?.value,
    ]),
  );

  for (const { strings, joined, hitchPin } of job.wirePaths) {
    const section = sectionOf(job, strings[0]!.key);
    const ask = (kind: LoopQuestion['kind'], sentence: string) =>
      questions.push({ kind, strings, section, sentence });
    const absent = strings.filter((string) => !place.has(nameOf(string)));
    if (absent.length > 0) {
      ask(
        'string that is not there',
        `A wire is noted on ${spoken(absent)}, but the note is not described with that many strings.`,
      );
      continue;
    }
    for (const string of strings) said.set(nameOf(string), joined);
    const [one, other] = strings;
    if (one !== undefined && other !== undefined) {
      if (sectionOf(job, one.key) !== sectionOf(job, other.key)) {
        ask(
          'loop across two sections',
          `One wire is noted on ${spoken(strings)}, which lie in two sections: a strut stands between them.`,
        );
      } else if (Math.abs(place.get(nameOf(one))! - place.get(nameOf(other))!) !== 1) {
        ask(
          'loop between strings that are not neighbours',
          `One wire is noted on ${spoken(strings)}, which are not neighbours: look again, or note it as a predecessor's repair.`,
        );
      }
      const [a, b] = [diameters.get(one.key), diameters.get(other.key)];
      if (a !== undefined && b !== undefined && Math.abs(a - b) > ONE_WIRE_TOLERANCE_M) {
        ask(
          'one wire, two sizes',
          `${spoken(strings)} are noted as one wire, but read ${(a * 1000).toFixed(3)} mm and ${(b * 1000).toFixed(3)} mm: one wire has one size.`,
        );
      }
    }
    if (hitchPin !== undefined) {
      const name = `${section}/${hitchPin}`;
      const known = hitchPins.get(name);
      if (known === undefined) hitchPins.set(name, [...strings]);
      else
        ask(
          'hitch pin with two wires',
          `Hitch pin ${hitchPin} is noted for ${spoken(known)} and for ${spoken(strings)}.`,
        );
    }
  }

  const sections = job.sections.map(({ section }) => {
    const own = order.filter((string) => sectionOf(job, string.key) === section);
    const joinedOf = (kind: string) => own.filter((string) => said.get(nameOf(string)) === kind).length;
    const unsaid = own.filter((string) => !said.has(nameOf(string)));
    const [looped, tied] = [joinedOf('looped'), joinedOf('tied')];
    if (unsaid.length === 0 && own.length % 2 === 1 && tied === 0 && joinedOf('unknown') === 0) {
      questions.push({
        kind: 'odd count without a tie',
        strings: [],
        section,
        sentence: `The section '${section}' has ${own.length} strings, an odd count, and no tied wire is noted: one at least must be tied.`,
      });
    }
    // Nothing said at all is a gap of the strip check, not a question about each string.
    if (unsaid.length > 0 && unsaid.length < own.length) {
      questions.push({
        kind: 'string without a wire',
        strings: unsaid,
        section,
        sentence: `In the section '${section}' no wire is noted for ${unsaid.length} of ${own.length} strings: ${spoken(unsaid.slice(0, 4))}${unsaid.length > 4 ? ' and more' : ''}.`,
      });
    }
    return { section, strings: own.length, looped, tied, unsaid };
  });
  return { sections, questions };
}

/** Every string of the piano as described, bass to treble, string 1 first. */
export function stringsInOrder(job: Job): StringPlace[] {
  return [...job.unisons.values()]
    .sort((a, b) => a.key - b.key)
    .flatMap(({ key, strings }) =>
      Array.from({ length: strings }, (_, index) => ({ key, string: index + 1 })),
    );
}

const nameOf = ({ key, string }: StringPlace): string => `${key}/${string}`;
const spoken = (strings: readonly StringPlace[]): string =>
  strings.map(({ key, string }) => `${noteName(key)} string ${string}`).join(' and ');
const sectionOf = (job: Job, key: number): string | undefined =>
  job.sections.find((section) => section.firstKey <= key && key <= section.lastKey)?.section;
