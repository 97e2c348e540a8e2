import { english, keyRangeAt, type Language, noteName, type SentenceUnit, spokenLengths } from '@becket/core';
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
    | 'hitch pins out of order'
    | 'hitch pin left out'
    | 'string that is not there';
  readonly strings: readonly StringPlace[];
  readonly section: string | undefined;
  readonly sentence: string;
  /** What somebody noted of the wire, where it may answer the question: 'tied by a predecessor'. */
  readonly noted?: string;
}

export interface LoopMapOptions {
  /** In which unit of length the sentences speak; millimetres when not given. */
  readonly lengthUnit?: SentenceUnit;
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
 * one tied wire; a hitch pin carries one wire; hitch pins that are numbered follow the strings, one after the other; both
 * strings of one wire have one size. What breaks these rules is a slip of the pen or a predecessor's repair: it is asked
 * about, never forbidden, and what was noted of the wire stands beside it. Common practice, no source.
 */
export function loopMap(
  job: Job,
  { lengthUnit = 'mm' }: LoopMapOptions = {},
  language: Language = english,
): {
  readonly sections: readonly LoopMap[];
  readonly questions: readonly LoopQuestion[];
} {
  const { say } = language;
  const { diameter } = spokenLengths(lengthUnit, language);
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

  for (const { strings, joined, hitchPin, otherHitchPin, note } of job.wirePaths) {
    const section = sectionOf(job, strings[0]!.key);
    const ask = (kind: LoopQuestion['kind'], sentence: string) =>
      questions.push({ kind, strings, section, sentence, ...(note === undefined ? {} : { noted: note }) });
    const absent = strings.filter((string) => !place.has(nameOf(string)));
    if (absent.length > 0) {
      ask(
        'string that is not there',
        say('A wire is noted on {strings}, but the note is not described with that many strings.', {
          strings: spoken(language, absent),
        }),
      );
      continue;
    }
    for (const string of strings) said.set(nameOf(string), joined);
    const [one, other] = strings;
    if (one !== undefined && other !== undefined) {
      if (sectionOf(job, one.key) !== sectionOf(job, other.key)) {
        ask(
          'loop across two sections',
          say('One wire is noted on {strings}, which lie in two sections: a strut stands between them.', {
            strings: spoken(language, strings),
          }),
        );
      } else if (Math.abs(place.get(nameOf(one))! - place.get(nameOf(other))!) !== 1) {
        ask(
          'loop between strings that are not neighbours',
          say(
            "One wire is noted on {strings}, which are not neighbours: look again, or note it as a predecessor's repair.",
            { strings: spoken(language, strings) },
          ),
        );
      }
      const [a, b] = [diameters.get(one.key), diameters.get(other.key)];
      if (a !== undefined && b !== undefined && Math.abs(a - b) > ONE_WIRE_TOLERANCE_M) {
        ask(
          'one wire, two sizes',
          say('{strings} are noted as one wire, but read {one} and {other}: one wire has one size.', {
            strings: spoken(language, strings),
            one: diameter(a),
            other: diameter(b),
          }),
        );
      }
    }
    for (const pin of [hitchPin, otherHitchPin]) {
      if (pin === undefined) continue;
      const name = `${section}/${pin}`;
      const known = hitchPins.get(name);
      if (known === undefined) hitchPins.set(name, [...strings]);
      else
        ask(
          'hitch pin with two wires',
          say('Hitch pin {pin} is noted for {strings} and for {others}.', {
            pin,
            strings: spoken(language, known),
            others: spoken(language, strings),
          }),
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
        sentence: say(
          "The section '{section}' has {count} strings, an odd count, and no tied wire is noted: one at least must be tied.",
          { section, count: own.length },
        ),
      });
    }
    // Nothing said at all is a gap of the strip check, not a question about each string.
    if (unsaid.length > 0 && unsaid.length < own.length) {
      questions.push({
        kind: 'string without a wire',
        strings: unsaid,
        section,
        sentence: say(
          "In the section '{section}' no wire is noted for {unsaid} of {count} strings: {strings}{more, select, yes { and more} other {}}.",
          {
            section,
            unsaid: unsaid.length,
            count: own.length,
            strings: spoken(language, unsaid.slice(0, 4)),
            more: unsaid.length > 4 ? 'yes' : 'no',
          },
        ),
      });
    }
    questions.push(...numberedPinQuestions(job, section, place, language));
    return { section, strings: own.length, looped, tied, unsaid };
  });
  return { sections, questions };
}

/**
 * Hitch pins that are named by numbers, against the order of the strings. Either direction may be counted; a pin that no
 * wire names, between pins that are named, is asked about. Names that are no numbers have no order.
 */
function numberedPinQuestions(
  job: Job,
  section: string,
  place: ReadonlyMap<string, number>,
  language: Language,
): LoopQuestion[] {
  const { say } = language;
  const wires = job.wirePaths
    .filter(({ strings, hitchPin }) => {
      const isHere = strings.every((string) => place.has(nameOf(string)));
      return isHere && sectionOf(job, strings[0]!.key) === section && /^\d{1,3}$/.test(hitchPin ?? '');
    })
    .map(({ strings, hitchPin, otherHitchPin, note }) => ({
      strings,
      note,
      at: Math.min(...strings.map((string) => place.get(nameOf(string))!)),
      pin: Number(hitchPin),
      pins: [hitchPin, otherHitchPin].filter((pin) => /^\d{1,3}$/.test(pin ?? '')).map(Number),
    }))
    .sort((a, b) => a.at - b.at);
  if (wires.length < 2) return [];
  const rises = wires.filter(({ pin }, index) => index > 0 && pin > wires[index - 1]!.pin).length;
  const direction = rises * 2 >= wires.length - 1 ? 1 : -1;
  const crossed = wires.flatMap((wire, index): LoopQuestion[] => {
    const before = wires[index - 1];
    // One pin named twice is asked about by its own rule.
    if (before === undefined || (wire.pin - before.pin) * direction >= 0) return [];
    const noted = wire.note ?? before.note;
    return [
      {
        kind: 'hitch pins out of order',
        strings: [...before.strings, ...wire.strings],
        section,
        sentence: say(
          "In the section '{section}' the wire of {strings} goes to hitch pin {pin} and the wire of {others} to hitch pin {otherPin}: they cross. Look again, or note it as a predecessor's repair.",
          {
            section,
            strings: spoken(language, before.strings),
            pin: before.pin,
            others: spoken(language, wire.strings),
            otherPin: wire.pin,
          },
        ),
        ...(noted === undefined ? {} : { noted }),
      },
    ];
  });
  const named = new Set(wires.flatMap(({ pins }) => pins));
  const [low, high] = [Math.min(...named), Math.max(...named)];
  const left = Array.from({ length: high - low + 1 }, (_, index) => low + index).filter(
    (pin) => !named.has(pin),
  );
  if (left.length === 0) return crossed;
  const some = left.slice(0, 6).join(', ');
  return [
    ...crossed,
    {
      kind: 'hitch pin left out',
      strings: [],
      section,
      sentence: say(
        "In the section '{section}' hitch pins from {low} to {high} are noted, but no wire for {some}{more, select, yes { and more} other {}}: an empty pin, or a wire that is not noted yet.",
        { section, low, high, some, more: left.length > 6 ? 'yes' : 'no' },
      ),
    },
  ];
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
const spoken = ({ say }: Language, strings: readonly StringPlace[]): string =>
  strings
    .map(({ key, string }) => say('{note} string {string}', { note: noteName(key), string }))
    .reduce((one, other) => say('{one} and {other}', { one, other }));
const sectionOf = (job: Job, key: number): string | undefined => keyRangeAt(key, job.sections)?.section;
