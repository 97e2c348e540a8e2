import { type Message, message } from '@becket/core';
import type { FactOf, SurveyPart, SurveyThing } from '@becket/journal';

/*
 * What the parts of a piano are and what their faults mean, for somebody who has never looked inside one. Common practice,
 * no source. Half a sentence each: whoever wants to know more asks.
 */

/** What a part is for, to stand behind its name. */
export const partInPlainWords: Readonly<Record<SurveyPart, Message>> = {
  bridges: message('the wooden rails that carry the movement of the strings to the soundboard'),
  soundboard: message('the large thin board that turns the movement of the strings into sound'),
  ribs: message('the bars glued beneath the soundboard, which keep it strong and slightly arched'),
  'pin-block': message('the block of hardwood that grips the tuning pins, and so keeps the piano in tune'),
  plate: message('the cast-iron frame that bears the pull of all strings, many tonnes together'),
  terminations: message('the metal parts at which the sounding length of a string begins and ends'),
  'soft-parts': message('the felts that silence strings, and parts of strings, that should not sound'),
  action: message('keys and hammers; noted here and no part of this work'),
};

/** What it means when something is wrong there. */
export const meaningOf: Readonly<Record<SurveyThing, Message>> = {
  'bridge-cracks': message(
    'Where the wood around the small pins of a bridge is cracked, strings sit loosely: they buzz, and they do not stay in tune.',
  ),
  'bridge-cap': message(
    'The cap is the thin layer on top of the bridge that the strings rest on; once worn or split it no longer passes on their movement cleanly.',
  ),
  'bridge-parting': message(
    'A bridge that comes away from the soundboard passes on less and less of the sound, and the pull of the strings can open the gap further.',
  ),
  'bridge-pins': message('Loose bridge pins let strings move sideways: they buzz and lose power.'),
  'board-cracks': message(
    'A crack in the soundboard is often harmless as long as its edges are held; one that moves can rattle, and can grow with the seasons.',
  ),
  'board-crown': message(
    'The slight arch of the board lets the strings press on it; where it has gone flat the sound is weaker and shorter.',
  ),
  'board-repairs': message('An earlier repair that gives way can rattle, and has to be done anew.'),
  'rib-parting': message(
    'Where a rib has come away, the board is no longer held there: it can rattle, and lose its arch.',
  ),
  'rib-cracks': message('A cracked rib no longer holds the board in its shape.'),
  'block-cracks': message(
    'Around a crack the tuning pins lose their grip, and the piano does not stay in tune.',
  ),
  'block-layers': message(
    'The block is glued up from layers; where they come apart the tuning pins lose their grip, and the block may have to be replaced.',
  ),
  'block-flange': message(
    'The block has to lie close against the edge of the iron frame; a gap lets it give way under the pull of the strings.',
  ),
  'block-treated': message(
    'Liquid was once put into the pin holes to tighten the pins; it can make them grip unevenly, and new pins may not hold.',
  ),
  'plate-cracks': message(
    'The iron frame bears the pull of all strings. A cracked frame must not be strung until a specialist has judged it: it can break, and hurt people.',
  ),
  'plate-bolts': message(
    'Bolts that are loose or missing let the iron frame move under the pull of the strings.',
  ),
  agraffes: message('A worn or bent guide (agraffe) makes its strings buzz; one that breaks lets them go.'),
  'pressure-bar': message('A worn bar makes its strings buzz or whistle, and can break them.'),
  'hitch-pins': message(
    'The far ends of the strings hang on these pins; a loose or bent one can let its string go.',
  ),
  dampers: message('Worn dampers let notes ring on after the key is let go.'),
  felts: message('Worn felt lets parts of the strings sound that should be silent.'),
  action: message('Keys and hammers are noted only; they are no part of this work.'),
};

type Seen = Extract<FactOf<'finding'>['answer'], { is: 'seen' }>;

export const gravityInPlainWords: Readonly<Record<Seen['gravity'], Message>> = {
  slight: message('Slight so far'),
  clear: message('Plain to see'),
  grave: message('Serious'),
};

export const remedyInPlainWords: Readonly<Record<Seen['whatToDo'], Message>> = {
  nothing: message('Nothing needs to be done about it now'),
  'while the strings are off': message('It is best mended while the strings are off'),
  'before stringing': message('It has to be mended before new strings go on'),
  'stops the job': message('It has to be settled before the work can begin'),
};

export const repairInPlainWords: Readonly<Record<NonNullable<Seen['repair']>, Message>> = {
  holds: message('The earlier repair holds'),
  fails: message('The earlier repair does not hold'),
  'cannot tell': message('Whether the earlier repair holds cannot be told yet'),
};
