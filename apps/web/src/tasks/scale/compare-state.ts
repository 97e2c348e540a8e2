import {
  english,
  inPoundsForce,
  type Language,
  type NoteAnalysis,
  newtons,
  noteName,
  PUBLISHED_STRENGTH_TABLES,
  sayKnown,
  scaleFindings,
} from '@becket/core';
import type { Job, ScaleComparison, WhichScale } from '@becket/journal';
import { type AnalysedScale, isAnythingStrung } from '@becket/tasks';
import { exponentText } from '../../parts/exponent-text.ts';
import { forceText, loadText } from '../../parts/force-text.ts';
import type { LengthUnit } from '../../parts/length-text.ts';
import { type Observable, observable } from '../../parts/observable.ts';
import { keysText, scaleName, stringText } from './scale-words.ts';

/** Two scales that are looked at side by side. */
export interface Pair {
  readonly before: WhichScale;
  readonly after: WhichScale | undefined;
  /** A third one, in the charts alone. */
  readonly beside?: WhichScale | undefined;
}

const pairs = new Map<string, Observable<Pair>>();

/** The pair that was looked at last in a job, kept while the program is open. */
export function pairOf(job: string): Observable<Pair> {
  const known = pairs.get(job) ?? observable<Pair>({ before: 'as found', after: undefined });
  pairs.set(job, known);
  return known;
}

/** Every scale of a job that can be looked at. */
export function scaleChoices(job: Job, { say }: Language = english): { value: WhichScale; words: string }[] {
  return [
    { value: 'as found', words: say('as found') },
    ...job.proposals.map(({ entry, name }) => ({ value: entry, words: name })),
    ...(isAnythingStrung(job) ? [{ value: 'as strung' as const, words: say('as strung') }] : []),
  ];
}

/** The pair with what is no longer there put right: the chosen scale, else the last proposal, against what was found. */
export function standingPair(
  job: Job,
  pair: Pair,
  language: Language = english,
): { before: WhichScale; after: WhichScale; beside: WhichScale | undefined } {
  const choices = scaleChoices(job, language).map(({ value }) => value);
  const chosen = job.chosenScale?.scale;
  const usual =
    chosen !== undefined && chosen !== 'as found' && choices.includes(chosen)
      ? chosen
      : (job.proposals.at(-1)?.entry ?? choices.at(-1)!);
  return {
    before: choices.includes(pair.before) ? pair.before : 'as found',
    after: pair.after !== undefined && choices.includes(pair.after) ? pair.after : usual,
    beside: pair.beside !== undefined && choices.includes(pair.beside) ? pair.beside : undefined,
  };
}

/** The table that break shares are told by: the one that the later of two proposals was planned with, else the usual one. */
export function tableOfPair(job: Job, { before, after }: { before: WhichScale; after: WhichScale }) {
  const tableOf = (which: WhichScale) => job.proposals.find(({ entry }) => entry === which)?.strengthTable;
  const name = tableOf(after) ?? tableOf(before);
  // A shop's own table may have been on another device.
  return PUBLISHED_STRENGTH_TABLES.some((table) => table.name === name) ? name : undefined;
}

/** One string's figure in a chart of several scales, in the unit of the axis. */
export interface SeriesPoint {
  readonly key: number;
  readonly value: number;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly words: string;
}

export interface ComparisonChartData {
  readonly name: 'tension' | 'break-share' | 'inharmonicity' | 'bearing';
  readonly question: string;
  readonly axis: string;
  readonly scale: 'linear' | 'log';
  readonly basis: string;
  /** Before first, then after, then the one beside them. */
  readonly series: readonly { readonly name: string; readonly points: readonly SeriesPoint[] }[];
}

/** Charts of two or three scales on the same axes; that of bearing only where it was read at any note. */
export function comparisonCharts(
  before: Pick<AnalysedScale, 'name' | 'analysis'>,
  after: Pick<AnalysedScale, 'name' | 'analysis'>,
  unit: LengthUnit,
  beside?: Pick<AnalysedScale, 'name' | 'analysis'>,
  language: Language = english,
): ComparisonChartData[] {
  const { fixed, list, say } = language;
  const tensionIn = (force: number) => (unit === 'mm' ? force : inPoundsForce(newtons(force)));
  const scales = [before, after, ...(beside === undefined ? [] : [beside])];
  const seriesOf = (drawn: (note: NoteAnalysis) => Omit<SeriesPoint, 'key'> | undefined) =>
    scales.map(({ name, analysis }) => ({
      name: scaleName(name, language),
      points: analysis.notes.flatMap((note) => {
        const point = drawn(note);
        return point === undefined ? [] : [{ key: note.key, ...point }];
      }),
    }));
  const hasBearing = scales.some(({ analysis }) =>
    analysis.notes.some(({ bearing }) => bearing !== undefined),
  );
  const spread = (value: number, uncertainty: number | undefined) => ({
    value,
    low: uncertainty === undefined ? undefined : value - uncertainty,
    high: uncertainty === undefined ? undefined : value + uncertainty,
  });
  const tables = [
    ...new Set([...before.analysis.notes, ...after.analysis.notes].map(({ strengthTable }) => strengthTable)),
  ];
  return [
    {
      name: 'tension',
      question: say('How hard does each string pull?'),
      axis: unit === 'mm' ? say('tension of one string (N)') : say('tension of one string (lbf)'),
      scale: 'linear',
      basis: say('At the pitch of equal temperament.'),
      series: seriesOf(({ tension, standardUncertainties }) => ({
        ...spread(tensionIn(tension), standardUncertainties && tensionIn(standardUncertainties.tension)),
        words: forceText(tension, unit),
      })),
    },
    {
      name: 'break-share',
      question: say('How near is each string to breaking?'),
      axis: say('tension as a share of the break load (%)'),
      scale: 'linear',
      basis: [
        say('Break load by the table {tables}.', {
          tables: list(tables.map((table) => sayKnown(table, language))),
        }),
        sayKnown(after.analysis.notes[0]?.strengthRemark ?? '', language),
      ].join(' '),
      series: seriesOf(({ breakShare, standardUncertainties }) => ({
        ...spread(breakShare * 100, standardUncertainties && standardUncertainties.breakShare * 100),
        words: `${fixed(breakShare * 100, 0)} %`,
      })),
    },
    {
      name: 'inharmonicity',
      question: say('How inharmonic is each string?'),
      axis: say('inharmonicity B, logarithmic'),
      scale: 'log',
      basis: say('B as in f = n·f₁·√(1 + B·n²); wound strings from their exact modes.'),
      series: seriesOf(({ inharmonicity, standardUncertainties }) => ({
        ...spread(inharmonicity, standardUncertainties?.inharmonicity),
        words: `B = ${exponentText(inharmonicity, language)}`,
      })),
    },
    ...(hasBearing
      ? [
          {
            name: 'bearing' as const,
            question: say('How hard does each note press on its bridge?'),
            axis:
              unit === 'mm' ? say('bearing of the whole note (N)') : say('bearing of the whole note (lbf)'),
            scale: 'linear' as const,
            basis: say(
              'Only notes at which bearing was read under load. Force = tension × sin of the bearing angle, which a proposal is taken to keep. From a rise the angle follows by its span; a span shorter than the string is a gauge over the bridge, with the bridge in its middle, where the angle is least. What a bridge and its board can bear is a matter for the maker’s data and a specialist.',
            ),
            series: seriesOf(({ bearing }) =>
              bearing === undefined
                ? undefined
                : {
                    ...spread(
                      tensionIn(bearing.force),
                      bearing.standardUncertainty && tensionIn(bearing.standardUncertainty),
                    ),
                    words: forceText(bearing.force, unit),
                  },
            ),
          },
        ]
      : []),
  ];
}

/** What the change comes to, in a few sentences. */
export function summarySentences(
  comparison: ScaleComparison,
  before: AnalysedScale,
  after: AnalysedScale,
  unit: LengthUnit,
  language: Language = english,
): string[] {
  const { say } = language;
  const { notes, changed, loads } = comparison;
  if (changed.length === 0)
    return [
      say(
        '“{after}” has the same sizes as “{before}” at every note: where they read differently it is by less than half a size.',
        { after: scaleName(after.name, language), before: scaleName(before.name, language) },
      ),
    ];
  const all = loads.find(({ of }) => of === 'all')!;
  const difference = all.after!.load - all.before!.load;
  const beyond = (scale: AnalysedScale) =>
    scaleFindings(scale.analysis, undefined, language).filter(({ weight }) => weight === 'beyond a limit')
      .length;
  const inOne = notes.filter((note) => note.before === undefined || note.after === undefined);
  const pull = {
    is: loadText(all.after!.load, unit, language),
    was: loadText(all.before!.load, unit, language),
    change: signed(difference, (force) => loadText(force, unit, language), language),
  };
  return [
    say('{count, plural, one {# note of {all} gets} other {# notes of {all} get}} another size.', {
      count: changed.length - inOne.length,
      all: notes.length,
    }),
    inOne.length === 0
      ? say('All strings together pull {is} instead of {was}, {change}.', pull)
      : say(
          'The strings of all notes that both scales have together pull {is} instead of {was}, {change}.',
          pull,
        ),
    say(
      'Beyond the shop’s limits: {before, plural, one {# finding} other {# findings}} before, {after, plural, one {# finding} other {# findings}} after.',
      { before: beyond(before), after: beyond(after) },
    ),
    ...(inOne.length > 0
      ? [
          say('Known in one of the two scales only: {notes}.', {
            notes: keysText(
              inOne.map(({ key }) => key),
              language,
            ),
          }),
        ]
      : []),
  ];
}

/** '+1.2 kN', '−0.4 kN', 'no change'. */
export function signed(value: number, words: (size: number) => string, { say }: Language = english): string {
  const text = words(Math.abs(value));
  return /[1-9]/.test(text) ? `${value > 0 ? '+' : '−'}${text}` : say('no change');
}

/** One line of the change list. */
export interface ChangeLine {
  readonly key: number;
  readonly note: string;
  readonly strings: string;
  readonly wires: readonly [string, string];
  readonly tensions: readonly [string, string];
  readonly breakShares: readonly [string, string];
  readonly inharmonicities: readonly [string, string];
}

export function changeLines(
  { changed }: ScaleComparison,
  unit: LengthUnit,
  language: Language = english,
): ChangeLine[] {
  return changed.map(({ key, before, after }) => {
    const both = (words: (note: NoteAnalysis) => string): [string, string] => [
      before === undefined ? '–' : words(before),
      after === undefined ? '–' : words(after),
    ];
    return {
      key,
      note: noteName(key),
      strings: String((after ?? before)?.note.strings ?? ''),
      wires: both(({ note }) => stringText(note.string, unit, language)),
      tensions: both(({ tension }) => forceText(tension, unit)),
      breakShares: both(({ breakShare }) => `${language.fixed(breakShare * 100, 0)} %`),
      inharmonicities: both(({ inharmonicity }) => exponentText(inharmonicity, language, 1)),
    };
  });
}

/** '3.4 wide', '1.2 narrow', '–' where a note is missing. */
export function beatText(rate: number | undefined, { fixed, say }: Language = english): string {
  if (rate === undefined) return '–';
  const beats = fixed(Math.abs(rate), 1);
  if (!/[1-9]/.test(beats)) return say('still');
  return rate > 0 ? say('{beats} wide', { beats }) : say('{beats} narrow', { beats });
}
