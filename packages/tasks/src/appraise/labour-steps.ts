import { english, type Language, type Message, message } from '@becket/core';
import type { Job } from '@becket/journal';

/** What the time of a step grows with. */
export type LabourUnit = 'job' | 'string' | 'note';

/** One step of the work with the time we start from: plain data, so that a shop can keep its own. */
export interface LabourStep {
  /** Stays the same from job to job: hours are learned under it. */
  readonly id: string;
  readonly what: string;
  /** Time of the step whatever the size of the piano. */
  readonly fixed_minutes: number;
  readonly per: LabourUnit;
  /** Time of each unit on top; 0 for a step that is alike on every piano. */
  readonly perUnit_minutes: number;
  /** Where the figures come from; printed beside what is worked out from them. */
  readonly source: string;
}

const source = message('our own starting figure');

/**
 * The steps of a restringing in their order, with times to start from until the shop has its own.
 * Our own starting figures, no source: replace them, or let finished jobs do it.
 */
export const STARTING_LABOUR_STEPS = [
  step('appraise', message('Look the piano over, survey its structure, write the report'), [120, 'job', 0]),
  step('record', message('Record strings, pins, felts and bearing before the strip'), [45, 'note', 3]),
  step('strip', message('Let the tension down and take off the old strings'), [60, 'string', 0.8]),
  step('clean', message('Clean plate, soundboard and terminations while the strings are off'), [
    240,
    'job',
    0,
  ]),
  step('order', message('Order pins, wire and bass strings, and check them in'), [120, 'job', 0]),
  step('pins', message('Ready the pin holes, try test pins, drive the pins'), [90, 'string', 1.2]),
  step('fit-felts', message('Fit new felts, braid and punchings'), [150, 'job', 0]),
  step('stringing', message('Put on the new strings'), [60, 'string', 3.5]),
  step('chip-and-raise', message('Chip to pitch and raise, three passes'), [30, 'string', 1.8]),
  step('settle', message('Tune and let settle, four visits'), [120, 'string', 1.2]),
  step('hand-over', message('Check, write the record and hand the piano over'), [90, 'job', 0]),
];

function step(
  id: string,
  what: Message,
  [fixed_minutes, per, perUnit_minutes]: readonly [number, LabourUnit, number],
) {
  return { id, what, fixed_minutes, per, perUnit_minutes, source } satisfies LabourStep;
}

/** The steps to start from, in the words of a language. */
export const startingLabourSteps = ({ say }: Language = english): readonly LabourStep[] =>
  STARTING_LABOUR_STEPS.map((one) => ({ ...one, what: say(one.what), source: say(one.source) }));

/** Strings of a note where nobody has said how many it has: 230 strings on 88 notes, our own starting figure. */
const STARTING_STRINGS_PER_NOTE = 230 / 88;
const STARTING_NOTES = 88;

/** How many strings and notes a piano has, and how far that was assumed. */
export interface PianoCounts {
  readonly notes: number;
  readonly strings: number;
  readonly woundStrings: number;
  /** Empty when everything is described. */
  readonly assumed: readonly string[];
}

/** Counts of a piano for its estimate. What is not described is assumed, and said. */
export function pianoCounts({ piano, unisons }: Job, { say }: Language = english): PianoCounts {
  const notes = piano === undefined ? STARTING_NOTES : piano.lastKey - piano.firstKey + 1;
  const described = [...unisons.values()].filter(
    ({ key }) => piano === undefined || (key >= piano.firstKey && key <= piano.lastKey),
  );
  const sum = (own: typeof described) => own.reduce((total, { strings }) => total + strings, 0);
  const open = notes - described.length;
  const missing = Math.round(open * STARTING_STRINGS_PER_NOTE);
  return {
    notes,
    strings: sum(described) + missing,
    woundStrings: sum(described.filter(({ winding }) => winding === 'wound')),
    assumed: [
      ...(piano === undefined
        ? [
            say('The compass is not described: {notes} notes are assumed ({source}).', {
              notes: STARTING_NOTES,
              source: say(source),
            }),
          ]
        : []),
      ...(open === 0
        ? []
        : [
            say(
              'The stringing of {open} of {notes} notes is not described: {strings} strings are assumed for them ({source}).',
              { open, notes, strings: missing, source: say(source) },
            ),
          ]),
    ],
  };
}

/** How many of a step's units a piano has. */
export function unitsOf({ per }: Pick<LabourStep, 'per'>, { strings, notes }: PianoCounts): number {
  return per === 'string' ? strings : per === 'note' ? notes : 1;
}
