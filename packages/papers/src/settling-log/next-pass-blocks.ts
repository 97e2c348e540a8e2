import { inKilonewtons, inNewtons, type Language, noteName, sayKnown } from '@becket/core';
import {
  type PassPlan,
  type SectionPlan,
  type SettlingLimits,
  STARTING_OVERPULL_LIMIT,
} from '@becket/journal';
import type { Block, Cell } from '../page-tree.ts';
import { offsetText } from './offset-text.ts';

/** What the next pass should be, by section, and what that rests on. */
export function nextPassBlocks(plan: PassPlan, remarks: readonly string[], language: Language): Block[] {
  const { say, plain } = language;
  if (plan.sections.length === 0)
    return [{ is: 'paragraph', text: say('No section is described yet: there is nothing to plan by.') }];
  return [
    {
      is: 'table',
      title: plan.isUnderWay
        ? say('Pass {pass}, which is under way, at A4 = {pitch} Hz', {
            pass: plan.pass,
            pitch: plain(plan.referencePitch_hz),
          })
        : say('Pass {pass}, at A4 = {pitch} Hz', {
            pass: plan.pass,
            pitch: plain(plan.referencePitch_hz),
          }),
      remarks: [
        say(
          'Overpull a = −k · b / (1 − k), from where the section stands (b) and the share of a raise that it loses (k), with one standard uncertainty. At most: where the first string comes to {share} % of its break load ({source}; {table}); never pull above it. *: held down by that limit.',
          {
            share: plain(Number((plan.limits.highestBreakShare * 100).toPrecision(4))),
            source: sayKnown(plan.limits.source, language),
            table: sayKnown(plan.limits.strengthTable, language),
          },
        ),
        ...limitRemark(plan.limits, language),
      ],
      columns: [
        { heading: say('section'), align: 'left', share: 64 },
        { heading: say('stands at, cents'), align: 'right', share: 74 },
        { group: say('share lost'), heading: '%', align: 'right', share: 46, page: 'core/pitch/fall-back' },
        { group: say('share lost'), heading: say('from'), align: 'left', share: 60, tone: 'quiet' },
        { heading: say('overpull, cents'), align: 'right', share: 60, page: 'core/pitch/next-overpull' },
        {
          group: say('at most'),
          heading: say('cents'),
          align: 'right',
          share: 36,
          page: 'core/pitch/overpull-limit',
        },
        { group: say('at most'), heading: say('by note'), align: 'left', share: 36, tone: 'quiet' },
        { group: say('load'), heading: 'kN', align: 'right', share: 32, tone: 'quiet' },
        { group: say('load'), heading: say('added, N'), align: 'right', share: 42, tone: 'quiet' },
      ],
      rows: plan.sections.map((section) => ({ cells: planCells(section, language) })),
    },
    ...(remarks.length === 0 ? [] : [{ is: 'list', marks: 'dots', items: remarks } as const]),
  ];
}

function planCells(
  { section, stands, fallBack, isDefault, next, highestOffset, limit, addedLoad }: SectionPlan,
  language: Language,
): Cell[] {
  const { say, fixed } = language;
  const unknown = { absent: say('unknown') };
  return [
    section,
    stands === undefined
      ? unknown
      : `${offsetText(stands.offset, language)} ± ${fixed(stands.standardUncertainty, 1)} ${stands.from === 'read' ? say('[an offset] read') : say('[an offset] foretold')}`,
    `${fixed(fallBack.share * 100, 0)} ± ${fixed(fallBack.standardUncertainty * 100, 0)}`,
    isDefault
      ? say('starting figure')
      : say('{count, plural, one {# fall} other {# falls}}', { count: fallBack.shares.length }),
    next === undefined
      ? { absent: say('not told') }
      : `${fixed(next.overpull, 1)} ± ${fixed(next.standardUncertainty, 1)}${next.isLimited ? ' *' : ''}`,
    highestOffset === undefined ? unknown : fixed(Math.floor(highestOffset * 10) / 10, 1).replace('-', '−'),
    limit.nearest === undefined ? '' : noteName(limit.nearest.key),
    limit.computed === 0 ? unknown : fixed(inKilonewtons(limit.load), 1),
    addedLoad === undefined ? '' : fixed(inNewtons(addedLoad), 0),
  ];
}

/** Rows to be filled in by hand at the piano, one a section, with the overpull that is told for it. */
export function blankPass(plan: PassPlan, language: Language): Block[] {
  const { say, fixed } = language;
  const blank = { blank: '' };
  const rows = plan.sections.map(({ section, next, highestOffset }) => ({
    cells: [
      // Two lines make the row high enough for a hand.
      `${section}\n `,
      blank,
      next === undefined ? { absent: say('not told') } : fixed(next.overpull, 1),
      highestOffset === undefined
        ? { absent: say('unknown') }
        : fixed(Math.max(0, Math.floor(highestOffset * 10) / 10), 1),
      blank,
      blank,
      blank,
    ],
  }));
  return [
    { is: 'heading', level: 2, text: say('To be filled in at the piano') },
    {
      is: 'facts',
      rows: [
        { name: say('[of settling] Pass'), value: '______' },
        { name: say('Day, name'), value: '____________________________' },
        { name: 'A4', value: '______ Hz' },
        { name: say('Temperature, relative humidity'), value: '______ °C   ______ %' },
      ],
    },
    ...(rows.length === 0
      ? []
      : [
          {
            is: 'table',
            columns: [
              { heading: say('section'), align: 'left', share: 70 },
              { heading: say('before, cents'), align: 'right', share: 54 },
              { heading: say('overpull told'), align: 'right', share: 54, tone: 'quiet' },
              { heading: say('at most'), align: 'right', share: 44, tone: 'quiet' },
              { heading: say('aimed at'), align: 'right', share: 48 },
              { heading: say('left at'), align: 'right', share: 48 },
              { heading: say('broke or slipped'), align: 'left', share: 90 },
            ],
            rows,
          } as const,
        ]),
  ];
}

/** Who set the limit for this job, beside what it started from. */
function limitRemark({ set }: SettlingLimits, language: Language): string[] {
  if (set === undefined) return [];
  const { highestBreakShare, source, strengthTable } = STARTING_OVERPULL_LIMIT;
  return [
    language.say(
      'The limit was set for this job by {by} on {day}; it started as {share} % ({source}; {table}).',
      {
        by: set.by,
        day: language.day(set.at),
        share: language.plain(highestBreakShare * 100),
        source: sayKnown(source, language),
        table: sayKnown(strengthTable, language),
      },
    ),
  ];
}
