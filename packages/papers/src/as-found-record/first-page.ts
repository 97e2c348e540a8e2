import { type AsFoundNote, type Job, type StripCheck, windings } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoFacts } from '../every-paper/piano-facts.ts';
import { counted, sealBox } from '../every-paper/running-lines.ts';
import { dayInWords } from '../figures/dates.ts';
import type { Block, BulletList } from '../page-tree.ts';

/** What this paper is, whose piano it speaks of, whether it is sealed, and what it comes to. */
export function firstPage(
  job: Job,
  notes: readonly AsFoundNote[],
  check: StripCheck,
  { address, isSealIntact }: PaperOptions,
): Block[] {
  return [
    { is: 'heading', level: 1, text: 'As-found record' },
    {
      is: 'paragraph',
      tone: 'lead',
      text: 'How this piano was strung before the old wire came off: every wire size and length that could be read, what was seen beside them, and what could not be found out. The next technician can rebuild the old stringing from it.',
    },
    sealBox(job, isSealIntact),
    {
      is: 'facts',
      rows: [
        { name: 'Job', value: job.title },
        { name: 'Customer', value: job.customer ?? 'not named' },
        ...pianoFacts(job),
        { name: 'Recorded', value: recordedBetween(job) },
      ],
    },
    { is: 'heading', level: 3, text: 'In short' },
    inShort(job, notes, check),
    {
      is: 'box',
      tone: 'caution',
      title: 'Wire under tension',
      texts: [
        'A strung piano pulls with many tonnes. Wear eye protection, keep your face out of the line of the wire, and let the tension down evenly and in steps, never section by section to nothing.',
        'Whether plate, block and frame will bear new strings is for the maker’s data and a licensed or specialist trade to judge; local rules come first.',
      ],
    },
    ...(address === undefined
      ? []
      : [{ is: 'address code', address, text: 'The job behind this paper, with every reading:' } as const]),
  ];
}

function recordedBetween({ readings }: Job): string {
  const asFound = readings.filter(({ stage }) => stage === 'as found');
  const days = asFound.map(({ at }) => at).sort();
  const [first, last] = [days[0], days.at(-1)];
  if (first === undefined || last === undefined) return 'no reading yet';
  const people = [...new Set(asFound.map(({ by }) => by))].sort().join(', ');
  const [from, to] = [dayInWords(first), dayInWords(last)];
  return `${from === to ? from : `${from} to ${to}`}, by ${people}`;
}

function inShort(job: Job, notes: readonly AsFoundNote[], check: StripCheck): BulletList {
  const described = notes.filter((note) => note.strings !== undefined);
  const strings = described.reduce((sum, note) => sum + (note.strings ?? 0), 0);
  const complete = described.filter((note) => note.missing.length === 0).length;
  const readings = job.readings.filter(({ stage }) => stage === 'as found').length;
  const accepted = check.gaps.length - check.openGaps.length;
  const stringsOf = (winding: (typeof windings)[number]) =>
    described.filter((note) => note.winding === winding).reduce((sum, note) => sum + (note.strings ?? 0), 0);
  const items = [
    notes.length === 0
      ? 'The piano is not described yet.'
      : `${counted(strings, 'string', 'strings')} on ${counted(described.length, 'note', 'notes')}: ${windings.map((winding) => `${stringsOf(winding)} ${winding}`).join(', ')}.${described.length < notes.length ? ` ${counted(notes.length - described.length, 'note is', 'notes are')} not described.` : ''}`,
    `${complete} of ${counted(notes.length, 'note has', 'notes have')} every size and length that a new string needs, from ${counted(readings, 'reading', 'readings')}.`,
    check.openGaps.length === 0
      ? 'Nothing that should be known before the strip is left open.'
      : `${counted(check.openGaps.length, 'thing', 'things')} that should be known before the strip ${check.openGaps.length === 1 ? 'is' : 'are'} still open.`,
    ...(accepted === 0
      ? []
      : [`${counted(accepted, 'gap was', 'gaps were')} accepted by name, with a reason; they are listed.`]),
    ...(job.unknownEntries.length === 0
      ? []
      : [
          `${counted(job.unknownEntries.length, 'entry of the journal comes', 'entries of the journal come')} from a later version of this program and cannot be printed here.`,
        ]),
  ];
  return { is: 'list', marks: 'dots', items };
}
