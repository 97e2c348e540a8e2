import { type Language, sayKnown } from '@becket/core';
import type { AsFoundNote, Job, StripCheck, windings } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoFacts } from '../every-paper/piano-facts.ts';
import { sealBox } from '../every-paper/running-lines.ts';
import type { Block, BulletList } from '../page-tree.ts';

/** What this paper is, whose piano it speaks of, whether it is sealed, and what it comes to. */
export function firstPage(
  job: Job,
  notes: readonly AsFoundNote[],
  check: StripCheck,
  { isSealIntact, language }: PaperOptions,
): Block[] {
  const { say } = language;
  return [
    { is: 'heading', level: 1, text: say('As-found record') },
    {
      is: 'paragraph',
      tone: 'lead',
      text: say(
        'How this piano was strung before the old wire came off: every wire size and length that could be read, what was seen beside them, and what could not be found out. The next technician can rebuild the old stringing from it.',
      ),
    },
    sealBox(job, isSealIntact, language),
    {
      is: 'facts',
      rows: [
        { name: say('Job'), value: sayKnown(job.title, language) },
        { name: say('Customer'), value: job.customer ?? say('not named') },
        ...pianoFacts(job, language),
        { name: say('Recorded'), value: recordedBetween(job, language) },
      ],
    },
    { is: 'heading', level: 3, text: say('In short') },
    inShort(job, notes, check, language),
    {
      is: 'box',
      tone: 'caution',
      title: say('Wire under tension'),
      texts: [
        say(
          'A strung piano pulls with many tonnes. Wear eye protection, keep your face out of the line of the wire, and let the tension down evenly and in steps, never section by section to nothing.',
        ),
        say(
          'Whether plate, block and frame will bear new strings is for the maker’s data and a licensed or specialist trade to judge; local rules come first.',
        ),
      ],
    },
  ];
}

function recordedBetween({ readings }: Job, { say, day }: Language): string {
  const asFound = readings.filter(({ stage }) => stage === 'as found');
  const days = asFound.map(({ at }) => at).sort();
  const [first, last] = [days[0], days.at(-1)];
  if (first === undefined || last === undefined) return say('no reading yet');
  const people = [...new Set(asFound.map(({ by }) => by))].sort().join(', ');
  const [from, to] = [day(first), day(last)];
  return from === to
    ? say('{day}, by {people}', { day: from, people })
    : say('{from} to {to}, by {people}', { from, to, people });
}

function inShort(
  job: Job,
  notes: readonly AsFoundNote[],
  check: StripCheck,
  { say, plain }: Language,
): BulletList {
  const described = notes.filter((note) => note.strings !== undefined);
  const strings = described.reduce((sum, note) => sum + (note.strings ?? 0), 0);
  const complete = described.filter((note) => note.missing.length === 0).length;
  const readings = job.readings.filter(({ stage }) => stage === 'as found').length;
  const accepted = check.gaps.length - check.openGaps.length;
  const stringsOf = (winding: (typeof windings)[number]) =>
    described.filter((note) => note.winding === winding).reduce((sum, note) => sum + (note.strings ?? 0), 0);
  const undescribed = notes.length - described.length;
  const items = [
    notes.length === 0
      ? say('The piano is not described yet.')
      : [
          say(
            '{strings, plural, one {# string} other {# strings}} on {notes, plural, one {# note} other {# notes}}: {plain} plain, {wound} wound.',
            {
              strings,
              notes: described.length,
              plain: plain(stringsOf('plain')),
              wound: plain(stringsOf('wound')),
            },
          ),
          ...(undescribed === 0
            ? []
            : [
                say('{count, plural, one {# note is} other {# notes are}} not described.', {
                  count: undescribed,
                }),
              ]),
        ].join(' '),
    say(
      '{complete} of {notes, plural, one {# note has} other {# notes have}} every size and length that a new string needs, from {readings, plural, one {{shown} reading} other {{shown} readings}}.',
      { complete: plain(complete), notes: notes.length, readings, shown: plain(readings) },
    ),
    check.openGaps.length === 0
      ? say('Nothing that should be known before the strip is left open.')
      : say(
          '{count, plural, one {# thing that should be known before the strip is} other {# things that should be known before the strip are}} still open.',
          { count: check.openGaps.length },
        ),
    ...(accepted === 0
      ? []
      : [
          say(
            '{count, plural, one {# gap was} other {# gaps were}} accepted by name, with a reason; they are listed.',
            { count: accepted },
          ),
        ]),
    ...(job.unknownEntries.length === 0
      ? []
      : [
          say(
            '{count, plural, one {# entry of the journal comes} other {# entries of the journal come}} from a later version of this program and cannot be printed here.',
            { count: job.unknownEntries.length },
          ),
        ]),
  ];
  return { is: 'list', marks: 'dots', items };
}
