import { type Language, type LengthUnit, sayKnown } from '@becket/core';
import { asFoundRecord, type BassAllowances, type BassOrder, bassOrder, type Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoFacts } from '../every-paper/piano-facts.ts';
import { runningLines, sealBox } from '../every-paper/running-lines.ts';
import { lengthText } from '../figures/lengths.ts';
import { originLine } from '../figures/readings.ts';
import type { Block, PageTree } from '../page-tree.ts';
import { loopsTable } from './loops-table.ts';
import { checksChapter, orderLog, orderWarnings } from './order-checks.ts';
import { orderForMachines } from './order-for-machines.ts';
import { type OrderNote, orderLines, orderNotes } from './order-lines.ts';
import { orderTable } from './order-table.ts';
import { toBeConfirmed } from './to-be-confirmed.ts';

/**
 * The bass string order: every wound string to be made, string by string, for whoever makes them.
 *
 * Core and windings are those of the chosen scale, and until one is chosen those as found.
 *
 * The customer is not named: a maker of strings does not need to know whose piano it is.
 */
export function bassStringOrderPaper(job: Job, options: PaperOptions, allowances?: BassAllowances): PageTree {
  const { firstUnit: unit, language } = options;
  const { say } = language;
  const { orders = [], signed = [] } = options.orders ?? {};
  const order = bassOrder(job, { signed, allowances, lengthUnit: unit }, language);
  const lines = orderLines(order);
  const notes = orderNotes(job, order);
  const loops = loopsTable(lines, unit, language);
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: say('Bass string order') },
    {
      is: 'paragraph',
      tone: 'lead',
      text: leadOf(order, language),
    },
    {
      is: 'facts',
      rows: [
        { name: say('Job'), value: sayKnown(job.title, language) },
        ...pianoFacts(job, language),
        { name: say('Strings wanted'), value: wantedInWords(notes, language) },
        { name: say('Made from'), value: order.scale },
        { name: say('Digest of the strings'), value: `SHA-256 ${order.digest}` },
        { name: say('Allowances'), value: allowancesInWords(order, unit, language) },
        { name: say('Tolerances of the checks'), value: tolerancesInWords(order, unit, language) },
        ...orderLog(orders, language).map((value) => ({ name: say('[of goods] Order'), value })),
      ],
    },
    ...orderWarnings(order, orders, language),
    sealBox(job, options.isSealIntact, language),
    ...undescribedNotes(job, language),
    { is: 'page break' },
    { is: 'heading', level: 2, text: say('To be confirmed before ordering') },
    {
      is: 'paragraph',
      text: say(
        'Strings made to order cannot be sent back. Tick each line once it is settled and written in.',
      ),
    },
    { is: 'list', marks: 'boxes', items: toBeConfirmed(job, notes, language) },
    ...checksChapter(order, language),
    {
      is: 'box',
      tone: 'caution',
      title: say('If an old string goes along as a pattern'),
      texts: [
        say(
          'Coil it, tie it in three places and cover both ends before it is posted: old wire springs and cuts.',
        ),
      ],
    },
    ...(lines.length === 0
      ? []
      : ([
          { is: 'page break' },
          { is: 'heading', level: 2, text: say('The strings') },
          orderTable(lines, unit, language),
          ...(loops === undefined ? [] : [loops]),
        ] as const)),
  ];
  return {
    paper: 'bass string order',
    title: say('Bass string order'),
    language: language.locale,
    orientation: 'landscape',
    running: runningLines(job, say(originLine), options),
    blocks,
    machineTable: orderForMachines(job, order, lines),
  };
}

function leadOf({ scale }: BassOrder, { say }: Language): string {
  return say(
    'Wound strings to be made from {scale}. No figure is improved, smoothed or rounded to a size; a figure that nobody has is a blank.',
    { scale },
  );
}

/** What was added to what was measured, so that a maker adds nothing twice. */
function allowancesInWords({ allowances }: BassOrder, unit: LengthUnit, language: Language): string {
  const { coils, becket_m, waste_m, pinDiameter_m, sources } = allowances;
  const inUnit = (length: number) => `${lengthText(length, unit, 'length', language)} ${unit}`;
  return language.say(
    'none in any length from loop to termination. Core beyond the front termination: front length, {coils} coils on the pin, {becket} for its eye and {waste} to cut off; a tuning pin that was not measured counts as {pin} ({sources}).',
    {
      coils: language.plain(coils),
      becket: inUnit(becket_m),
      waste: inUnit(waste_m),
      pin: `${lengthText(pinDiameter_m, unit, 'diameter', language)} ${unit}`,
      sources: sourcesInWords(sources, language),
    },
  );
}

/** By how much figures may differ before a check says so. */
function tolerancesInWords({ allowances }: BassOrder, unit: LengthUnit, language: Language): string {
  const { lengthTolerance_m, unisonTolerance_m, toleranceSources } = allowances;
  return language.say(
    'lengths that belong together {length}; core and over-all diameter of the strings of one note {diameter} ({sources})',
    {
      length: `${lengthText(lengthTolerance_m, unit, 'length', language)} ${unit}`,
      diameter: `${lengthText(unisonTolerance_m, unit, 'diameter', language)} ${unit}`,
      sources: sourcesInWords(toleranceSources, language),
    },
  );
}

/** Each source of ours is said, each that a shop typed stays as it is. */
const sourcesInWords = (sources: readonly string[], language: Language): string =>
  sources.map((source) => sayKnown(source, language)).join('; ');

function wantedInWords(lines: readonly OrderNote[], { say, plain }: Language): string {
  if (lines.length === 0) return say('[strings] none: no note of this record is described as wound');
  const strings = lines.reduce((sum, { note }) => sum + (note.strings ?? 0), 0);
  const unsaid = lines.filter(({ note }) => note.strings === undefined).length;
  return say(
    '{strings} for {notes, plural, one {# note} other {# notes}}{unsaid, plural, =0 {} one {; for # note the number is not said} other {; for # notes the number is not said}}',
    { strings: plain(strings), notes: lines.length, unsaid },
  );
}

function undescribedNotes(job: Job, { say }: Language): Block[] {
  const undescribed = asFoundRecord(job).notes.filter((note) => note.winding === undefined);
  if (undescribed.length === 0) return [];
  return [
    {
      is: 'box',
      tone: 'note',
      title: say('This order may not be whole'),
      texts: [
        say(
          'For {count, plural, one {# note} other {# notes}} ({first} and up) nobody has said whether the strings are plain or wound. They are not in this order.',
          { count: undescribed.length, first: undescribed[0]!.note },
        ),
      ],
    },
  ];
}
