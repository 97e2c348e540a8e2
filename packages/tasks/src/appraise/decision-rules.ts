import { type Message, message } from '@becket/core';
import type { findingGravities, SurveyThing, Verdict } from '@becket/journal';

type Gravity = (typeof findingGravities)[number];

/** What a thing seen on the structure means for the decision: plain data, readable by whoever wants to know why. */
export interface FindingRule {
  readonly things: readonly SurveyThing[];
  /** Verdict by how far it has gone; left out where it weighs nothing. */
  readonly verdict: Readonly<Partial<Record<Gravity, Verdict>>>;
  /** What has to be done or judged, where the verdict is not a plain go. */
  readonly condition: Message;
  /** Who judges it; undefined where the technician does. */
  readonly deferTo: Message | undefined;
}

/** Where all of this comes from. */
export const DECISION_SOURCE = message('common practice, no source');

/** Rules for what the survey says. Common practice, no source. */
export const FINDING_RULES: readonly FindingRule[] = [
  {
    things: ['plate-cracks'],
    verdict: { slight: 'go with conditions', clear: 'go with conditions', grave: 'stop' },
    condition: message('The plate is judged by a specialist before tension is changed.'),
    deferTo: message('a plate repair specialist'),
  },
  {
    things: ['plate-bolts'],
    verdict: { clear: 'go with conditions', grave: 'go with conditions' },
    condition: message('Plate bolts and screws are put right with the tension down, to the maker’s data.'),
    deferTo: undefined,
  },
  {
    things: ['block-cracks', 'block-layers'],
    verdict: { slight: 'go with conditions', clear: 'go with conditions', grave: 'stop' },
    condition: message('The pin block is examined with the strings off before pins are ordered.'),
    deferTo: message('a specialist for pin blocks'),
  },
  {
    things: ['block-flange', 'block-treated'],
    verdict: { clear: 'go with conditions', grave: 'go with conditions' },
    condition: message(
      'Pin block and flange are looked at with the strings off, and test pins are fitted there.',
    ),
    deferTo: undefined,
  },
  {
    things: ['bridge-cracks', 'bridge-cap', 'bridge-parting', 'bridge-pins'],
    verdict: { clear: 'go with conditions', grave: 'go with conditions' },
    condition: message('The bridge is mended before strings go on.'),
    deferTo: undefined,
  },
  {
    things: ['board-crown', 'rib-parting', 'rib-cracks'],
    verdict: { clear: 'go with conditions', grave: 'go with conditions' },
    condition: message('The soundboard and its ribs are judged before the scale is settled.'),
    deferTo: message('a specialist for soundboards'),
  },
  {
    things: ['board-cracks', 'board-repairs'],
    verdict: { clear: 'go with conditions', grave: 'go with conditions' },
    condition: message('The soundboard is mended while the strings are off.'),
    deferTo: undefined,
  },
  {
    things: ['agraffes', 'pressure-bar', 'hitch-pins'],
    verdict: { clear: 'go with conditions', grave: 'go with conditions' },
    condition: message('Agraffes, bars and hitch pins are put right before strings go on.'),
    deferTo: undefined,
  },
];

/** Figures at which the decision turns. Our own where nothing else is said; common practice, no source. */
export const DECISION_LIMITS = {
  /** Share of the pins with a grip that are very loose, from which the block is not strung as it is. */
  veryLooseShareToStop: 0.25,
  /** A chance to have missed a bad zone above this is a gap of the survey. */
  zoneChanceAccepted: 0.2,
  /** Fewer pins than this say little of a section. */
  fewestPinsOfSection: 3,
} as const;

/** Things that have to be looked at before a plain go can be said. */
export const LOOK_FIRST: readonly SurveyThing[] = ['plate-cracks', 'block-cracks', 'block-layers'];

export const DECISION_CAUTIONS: readonly Message[] = [
  message(
    'This weighs what was noted and nothing else. Plate and structure are for a specialist, by the maker’s data.',
  ),
  message(
    'The strings of a piano pull with many tonnes-force together. Do not loosen plate bolts or screws under tension, and let tension down evenly.',
  ),
  message(
    'Keep to local codes, and leave to licensed trades what they ask for: lifting and moving, solvents, electrical parts in the piano.',
  ),
];
