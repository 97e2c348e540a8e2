import { english, inMicrometres, inMils, type Language, metres, parseNote } from '@becket/core';
import type { FactToRecord, InferredWireSize, InferredWireSizes, WireLatticeName } from '@becket/tasks';
import type { LengthUnit } from '../../parts/length-text.ts';
import { type Observable, observable } from '../../parts/observable.ts';

/** Which way of numbering the user asks for. */
export type Numbering = 'as the readings say' | WireLatticeName;

const chosen = new Map<string, Observable<Numbering>>();

/** The numbering asked for in a job, kept while the program is open. */
export function numberingOf(job: string): Observable<Numbering> {
  const known = chosen.get(job) ?? observable<Numbering>('as the readings say');
  chosen.set(job, known);
  return known;
}

/** A run of neighbouring notes of one inferred size. */
export interface SizeRun {
  readonly size: string;
  readonly diameter_m: number;
  readonly first: InferredWireSize;
  readonly last: InferredWireSize;
  readonly notes: number;
  /** The least certain note of the run. */
  readonly least: InferredWireSize;
}

export function sizeRuns(notes: readonly InferredWireSize[]): SizeRun[] {
  const runs: SizeRun[] = [];
  for (const note of notes) {
    const run = runs.at(-1);
    if (run !== undefined && run.diameter_m === note.diameter && run.last.key === note.key - 1)
      runs[runs.length - 1] = {
        ...run,
        last: note,
        notes: run.notes + 1,
        least: note.odds < run.least.odds ? note : run.least,
      };
    else
      runs.push({
        size: note.size,
        diameter_m: note.diameter,
        first: note,
        last: note,
        notes: 1,
        least: note,
      });
  }
  return runs;
}

/** '97 %'; never '100 %' of what is not certain. */
export function oddsText(odds: number, { say }: Language = english): string {
  if (odds > 0.995) return say('over 99 %');
  return `${Math.round(odds * 100)} %`;
}

/** What chose the numbering, in one sentence. */
export function numberingSentence(
  { lattice, isLatticeFixed, latticeOdds }: InferredWireSizes,
  language: Language = english,
): string {
  const { say } = language;
  if (isLatticeFixed)
    return say('You fixed the {lattice} numbering; the readings and stamps are not asked.', {
      lattice: say(lattice),
    });
  const odds = latticeOdds[lattice];
  return say(
    'The readings and stamps speak for {lattice} numbers{odds, select, none {} other { ({odds})}}.',
    {
      lattice: say(lattice),
      odds: odds === undefined ? 'none' : oddsText(odds, language),
    },
  );
}

/** How far worn wire reads from new wire, with its interval, in one sentence. */
export function biasSentence(
  { bias, scatter }: InferredWireSizes,
  unit: LengthUnit,
  language: Language = english,
): string {
  const { say } = language;
  const side = (value: number) =>
    say('{difference} {is, select, thinner {thinner} other {thicker}}', {
      difference: smallText(Math.abs(value), unit, language),
      is: value < 0 ? 'thinner' : 'thicker',
    });
  return say(
    'As a whole the readings are {bias} than new wire (between {low} and {high}, 95 %); single readings scatter by {scatter}.',
    {
      bias: side(bias.value),
      low: side(bias.low),
      high: side(bias.high),
      scatter: smallText(scatter.value, unit, language),
    },
  );
}

/** '2 µm (0.08 thou)': differences of diameters, which a diameter's own digits would round away. */
function smallText(length_m: number, unit: LengthUnit, { fixed }: Language): string {
  const micrometres = `${fixed(inMicrometres(metres(length_m)), 0)} µm`;
  const thou = `${fixed(inMils(metres(length_m)), 2)} thou`;
  return unit === 'mm' ? `${micrometres} (${thou})` : `${thou} (${micrometres})`;
}

export interface StampForm {
  readonly note: string;
  readonly on: 'bridge' | 'plate' | 'elsewhere';
  readonly text: string;
  readonly lattice: 'US' | 'metric' | 'unknown';
  readonly says: 'starts here' | 'ends here';
}

export const newStampForm = (note = ''): StampForm => ({
  note,
  on: 'bridge',
  text: '',
  lattice: 'unknown',
  says: 'starts here',
});

/** The stamp that a form describes. Throws when its note cannot be read or nothing stands on it. */
export function stampOf({ note, text, ...rest }: StampForm, language: Language = english): FactToRecord {
  const { say } = language;
  const words = text.trim();
  if (words === '')
    throw new RangeError(
      say(
        'Cannot keep this stamp: what stands there is needed, nothing was found. Type the number as it is stamped.',
      ),
    );
  return { kind: 'size-stamp', key: parseNote(note.trim(), undefined, language), text: words, ...rest };
}
