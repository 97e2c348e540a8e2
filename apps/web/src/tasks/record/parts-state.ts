import { english, keyRangeAt, type Language, noteName, parseNote } from '@becket/core';
import {
  type Absence,
  type FactOf,
  type Job,
  type ReadingQuantityName,
  type ReadUnit,
  readingQuantities,
  type StandingReading,
  softPartMost,
  unitsForDimension,
} from '@becket/journal';
import type { FactToRecord, ReadingToRecord } from '@becket/tasks';
import type { LengthUnit } from '../../parts/length-text.ts';
import { bothUnits, lengthToType, typedLength, typedLengthUpTo } from './typed-length.ts';
import { readTypedReading } from './typed-reading.ts';

/** No two points of a piano lie further apart. */
const longestOnAPiano_m = 3;

export const softParts = ['stringing braid', 'felt', 'punchings', 'pin bushings'] as const;
export type SoftPart = (typeof softParts)[number];
type StandingSoftPart = Job['softParts'][number];

export interface SoftPartForm {
  readonly answer: 'known' | Absence;
  readonly thickness: string;
  readonly length: string;
  readonly width: string;
  readonly colour: string;
  readonly where: string;
  /** Why it is unknown or not there. */
  readonly why: string;
}

/** The form of a soft part as it stands; empty while nothing is said. */
export function softPartForm(
  part: StandingSoftPart | undefined,
  unit: LengthUnit,
  language: Language = english,
): SoftPartForm {
  const known = part?.answer.is === 'known' ? part.answer : undefined;
  const words = (length_m: number | undefined) =>
    length_m === undefined ? '' : lengthToType(length_m, unit, language);
  return {
    answer: part?.answer.is ?? 'known',
    thickness: words(known?.thickness_m),
    length: words(known?.length_m),
    width: words(known?.width_m),
    colour: known?.colour ?? '',
    where: known?.where ?? '',
    why: part !== undefined && part.answer.is !== 'known' ? (part.answer.reason ?? '') : '',
  };
}

/** The soft part that a form describes. Throws when a length cannot be read, or when nothing at all is said of it. */
export function softPartOf(
  form: SoftPartForm,
  { part, section, unit }: { readonly part: SoftPart; readonly section: string; readonly unit: LengthUnit },
  language: Language = english,
): FactToRecord {
  const { say } = language;
  if (form.answer !== 'known')
    return {
      kind: 'soft-part',
      part,
      section,
      answer: { is: form.answer, ...text('reason', form.why) },
    };
  const lengths = {
    ...length('thickness_m', form.thickness, unit, say('thickness'), language),
    ...length('length_m', form.length, unit, say('length'), language),
    ...length('width_m', form.width, unit, say('width'), language),
  };
  const answer = {
    is: 'known' as const,
    ...lengths,
    ...text('colour', form.colour),
    ...text('where', form.where),
  };
  if (Object.keys(answer).length === 1)
    throw new RangeError(
      say(
        'Cannot keep the {part}: a thickness, a length, a colour or a place is needed, none was found. Fill one in, or choose another answer.',
        { part: say(part) },
      ),
    );
  return { kind: 'soft-part', part, section, answer };
}

/** What is known of a soft part, in one line. */
export function softPartWords(
  { answer }: StandingSoftPart,
  unit: LengthUnit,
  language: Language = english,
): string {
  const { say } = language;
  if (answer.is !== 'known')
    return answer.reason === undefined ? say(answer.is) : `${say(answer.is)}: ${answer.reason}`;
  const { thickness_m, length_m, width_m, colour, where } = answer;
  const size = (value: number) => bothUnits(value, unit, 'length', language);
  return [
    ...(thickness_m === undefined
      ? []
      : [say('thick {size}', { size: bothUnits(thickness_m, unit, 'thin', language) })]),
    ...(length_m === undefined ? [] : [say('long {size}', { size: size(length_m) })]),
    ...(width_m === undefined ? [] : [say('wide {size}', { size: size(width_m) })]),
    ...(colour === undefined ? [] : [colour]),
    ...(where === undefined ? [] : [where]),
  ].join(', ');
}

export interface PlatePartForm {
  readonly part: string;
  readonly section: string;
  readonly isMovable: boolean;
  readonly distances: readonly { readonly from: string; readonly distance: string }[];
  readonly note: string;
}

export const newPlatePartForm = (section: string): PlatePartForm => ({
  part: '',
  section,
  isMovable: true,
  distances: [
    { from: '', distance: '' },
    { from: '', distance: '' },
  ],
  note: '',
});

/** The plate part that a form describes. Throws when it has no name, or a distance lacks its other half. */
export function platePartOf(
  form: PlatePartForm,
  unit: LengthUnit,
  language: Language = english,
): FactToRecord {
  const { say } = language;
  const part = form.part.trim();
  if (part === '')
    throw new RangeError(
      say(
        'Cannot keep this part: a name of its own is needed, none was found. Call it bar 1, string rest, …',
      ),
    );
  const distances = form.distances.flatMap(({ from, distance }) => {
    const value = typedLength(distance, unit, say('distance'), language);
    if (value !== undefined && value > longestOnAPiano_m)
      typedLengthUpTo(longestOnAPiano_m, distance, unit, say('distance'), language);
    const point = from.trim();
    if (value === undefined && point === '') return [];
    if (value === undefined || point === '')
      throw new RangeError(
        say(
          'Cannot keep the distances of {part}: both the point and the distance are needed, only {found} was found. Fill in the other, or clear both.',
          { part, found: point === '' ? say('a distance') : `'${point}'` },
        ),
      );
    return [{ from: point, distance_m: value }];
  });
  if (form.isMovable && distances.length === 0)
    throw new RangeError(
      say(
        'Cannot keep {part}: a movable piece needs a distance from a named point, none was found. Measure it before it comes off.',
        { part },
      ),
    );
  return {
    kind: 'plate-part',
    part,
    section: form.section,
    isMovable: form.isMovable,
    distances,
    ...text('note', form.note),
  };
}

/** The form of a plate part as it stands. */
export function platePartForm(
  { part, section, isMovable, distances, note }: Job['plateParts'][number],
  unit: LengthUnit,
  language: Language = english,
): PlatePartForm {
  return {
    part,
    section,
    isMovable,
    distances: distances.map(({ from, distance_m }) => ({
      from,
      distance: lengthToType(distance_m, unit, language),
    })),
    note: note ?? '',
  };
}

/**
 * The plate part that a form describes in place of one that stands, and the entry to take back with it where it changes
 * its name or section. Throws as `platePartOf` does, and when another piece has that name: its distances would be lost.
 */
export function platePartInPlaceOf(
  form: PlatePartForm,
  {
    unit,
    before,
    known,
  }: {
    readonly unit: LengthUnit;
    readonly before: Job['plateParts'][number] | undefined;
    readonly known: Job['plateParts'];
  },
  language: Language = english,
): { readonly fact: FactToRecord; readonly takesBack: string | undefined } {
  const fact = platePartOf(form, unit, language);
  const part = form.part.trim();
  const namesake = known.find((one) => one.part === part && one.section === form.section);
  if (namesake !== undefined && namesake.entry !== before?.entry)
    throw new RangeError(
      language.say(
        "Cannot keep {part}: a name of its own is needed, the section '{section}' has a piece of that name. Change that one, or call this one otherwise.",
        { part, section: form.section },
      ),
    );
  return { fact, takesBack: namesake === undefined ? before?.entry : undefined };
}

export type LoopStyle = FactOf<'winding-described'>['loopStyle'];
export const loopStyles: readonly LoopStyle[] = [
  'single loop',
  'double loop',
  'twisted loop',
  'other',
  'unknown',
];
export type Twist = FactOf<'winding-described'>['twist'];
export const twists: readonly Twist[] = ['right', 'left', 'unknown'];

/** The same winding said of every wound note from one to another. Throws when no wound note lies between. */
export function windingsOf(
  job: Job,
  form: {
    readonly from: string;
    readonly to: string;
    /** Of one string of each note; of every string without it. */
    readonly string?: number | undefined;
    readonly loopStyle: LoopStyle;
    readonly twist: Twist;
  },
  language: Language = english,
): FactToRecord[] {
  const { say } = language;
  const [one, other] = [
    parseNote(form.from.trim(), undefined, language),
    parseNote(form.to.trim() || form.from.trim(), undefined, language),
  ];
  const [first, last] = [Math.min(one, other), Math.max(one, other)];
  const keys = [...job.unisons.values()]
    .filter(({ key, winding }) => winding === 'wound' && first <= key && key <= last)
    .map(({ key }) => key)
    .sort((a, b) => a - b);
  if (keys.length === 0)
    throw new RangeError(
      say(
        'Cannot keep this winding: a note with wound strings is needed, none is described from {from} to {to}. Check the notes, or the stringing.',
        { from: form.from, to: form.to || form.from },
      ),
    );
  const { string } = form;
  const short = keys.find((key) => string !== undefined && (job.unisons.get(key)?.strings ?? 0) < string);
  if (short !== undefined)
    throw new RangeError(
      say(
        'Cannot keep this winding: a note with a string {string} is needed, {note} has {strings, plural, one {# string} other {# strings}}. Check the notes, or choose every string.',
        { string: string!, note: noteName(short), strings: job.unisons.get(short)!.strings },
      ),
    );
  return keys.map((key) => ({
    kind: 'winding-described',
    key,
    ...(string === undefined ? {} : { string }),
    loopStyle: form.loopStyle,
    twist: form.twist,
  }));
}

/** What is read at a few places rather than at every string, and what must be said with it. */
export const placeQuantities = {
  'hitch-pin-diameter': { at: 'note' },
  'bearing-angle': { at: 'note', needs: 'span and load' },
  'bearing-rise': { at: 'note', needs: 'span and load' },
  'soundboard-crown': { at: 'section', needs: 'span and load' },
  'pin-height': { at: 'note' },
  'pin-length': { at: 'note' },
  'pin-coils': { at: 'note' },
  'pressure-bar-height': { at: 'note or section' },
  'strike-line-spacing': { at: 'note' },
  'bridge-spacing': { at: 'note' },
  'pitch-offset': { at: 'note' },
  'relative-humidity': { at: 'piano' },
  temperature: { at: 'piano' },
} as const satisfies Partial<
  Record<
    ReadingQuantityName,
    { at: 'note' | 'section' | 'note or section' | 'piano'; needs?: 'span and load' }
  >
>;
export type PlaceQuantity = keyof typeof placeQuantities;
export const placeQuantityNames = Object.keys(placeQuantities) as PlaceQuantity[];

/** Whether a figure says nothing without its span and without whether the strings pressed on the board. */
export const needsSpan = (quantity: PlaceQuantity): boolean => 'needs' in placeQuantities[quantity];

export interface PlaceReadingForm {
  readonly quantity: PlaceQuantity;
  readonly value: string;
  readonly unit: ReadUnit;
  readonly note: string;
  readonly section: string;
  readonly point: string;
  readonly span: string;
  readonly loaded: 'not said' | 'loaded' | 'unloaded';
  /** Name of the one in hand; undefined where none is. */
  readonly instrument?: string | undefined;
}

/** Units to choose from; lengths in the unit of the screen first. */
export function unitsOfQuantity(quantity: PlaceQuantity, unit: LengthUnit): ReadUnit[] {
  const units = unitsForDimension(readingQuantities[quantity].dimension);
  return units.includes(unit) ? [unit, ...units.filter((one) => one !== unit)] : units;
}

/** The reading that a form describes. Throws when its number, place, span or load is missing. */
export function placeReadingOf(
  form: PlaceReadingForm,
  screenUnit: LengthUnit,
  language: Language = english,
): ReadingToRecord {
  const { say } = language;
  const { quantity } = form;
  const label = say(readingQuantities[quantity].label);
  const typed = readTypedReading(form.value, quantity, language);
  if (typed.is !== 'number')
    throw new RangeError(
      typed.is === 'problem'
        ? typed.sentence
        : say(
            'Cannot record this {label}: a number is needed, none was found. Type what the instrument shows.',
            { label },
          ),
    );
  const needs = needsSpan(quantity);
  if (needs && form.loaded === 'not said')
    throw new RangeError(
      say(
        'Cannot record this {label}: whether the strings were pressing on the board is needed, it is not said. Choose loaded or unloaded.',
        { label },
      ),
    );
  const span = needs
    ? typedLengthUpTo(longestOnAPiano_m, form.span, screenUnit, say('span'), language)
    : undefined;
  if (needs && span === undefined)
    throw new RangeError(
      say(
        'Cannot record this {label}: the span it was read over is needed, none was found. Without it the figure says nothing.',
        { label },
      ),
    );
  const { at } = placeQuantities[quantity];
  const note = form.note.trim();
  if (at === 'note' && note === '')
    throw new RangeError(
      say(
        'Cannot record this {label}: the note it belongs to is needed, none was found. Type a note such as F#3.',
        { label },
      ),
    );
  const point = form.point.trim();
  if (at === 'note or section' && note === '' && point === '')
    throw new RangeError(
      say(
        'Cannot record this {label}: the point it was read at is needed, neither a note nor a point was found. Name the point, such as at the left screw.',
        { label },
      ),
    );
  return {
    quantity,
    value: typed.value,
    unit: (typed.unit as ReadUnit | undefined) ?? form.unit,
    place: {
      ...(at !== 'piano' && at !== 'section' && note !== ''
        ? { key: parseNote(note, undefined, language) }
        : {}),
      ...((at === 'section' || (at === 'note or section' && note === '')) && form.section !== ''
        ? { section: form.section }
        : {}),
      ...(point === '' ? {} : { point }),
    },
    ...(needs ? { span_m: span, loaded: form.loaded === 'loaded' } : {}),
    ...(form.instrument === undefined ? {} : { instrument: form.instrument }),
  };
}

/** Readings of the kind that is taken here and there, as found, of a section; or of what lies in none. */
export function placeReadingsOf(job: Job, section: string | undefined): StandingReading[] {
  const names: readonly string[] = placeQuantityNames;
  const sectionOf = ({ key, section: named }: StandingReading['place']): string | undefined =>
    named ?? (key === undefined ? undefined : keyRangeAt(key, job.sections)?.section);
  return job.readings.filter(
    // What is read of one string has its place among the strings.
    ({ quantity, stage, place }) =>
      stage === 'as found' &&
      names.includes(quantity) &&
      place.string === undefined &&
      sectionOf(place) === section,
  );
}

function text<Name extends string>(name: Name, words: string): { [N in Name]?: string } {
  const said = words.trim();
  return (said === '' ? {} : { [name]: said }) as { [N in Name]?: string };
}

function length<Name extends keyof typeof softPartMost>(
  name: Name,
  typed: string,
  unit: LengthUnit,
  what: string,
  language: Language = english,
): { [N in Name]?: number } {
  const value = typedLengthUpTo(softPartMost[name], typed, unit, what, language);
  return (value === undefined ? {} : { [name]: value }) as { [N in Name]?: number };
}

/** The sample that a form describes. Throws when it has no name or no label. */
export function sampleOf(
  form: {
    readonly what: string;
    readonly label: string;
    readonly note: string;
  },
  language: Language = english,
): FactToRecord {
  const { say } = language;
  const [what, label, note] = [form.what.trim(), form.label.trim(), form.note.trim()];
  if (what === '' || label === '')
    throw new RangeError(
      say(
        'Cannot keep this sample: what it is and the label on its bag are needed, {which} was not found. Fill it in, so that the bag can be found again.',
        { which: what === '' ? say('the first') : say('the second') },
      ),
    );
  return {
    kind: 'sample-kept',
    what,
    label,
    place: note === '' ? {} : { key: parseNote(note, undefined, language) },
  };
}
