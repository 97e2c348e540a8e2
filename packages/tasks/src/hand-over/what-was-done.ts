import { english, inMillimetres, type Language, message, metres } from '@becket/core';
import type { Job, Settling, Stringing, StrungScale } from '@becket/journal';
import { noteRuns } from '../note-runs.ts';

/** What was done on the piano, one sentence each, in the order of the work; each from a fact of the job. */
export function whatWasDone(
  job: Job,
  { stringing, settling, scale }: { stringing: Stringing; settling: Settling; scale: StrungScale },
  language: Language = english,
): string[] {
  return [
    ...chosenScale(job, scale, language),
    ...pinsDriven(job, language),
    ...wiresStrung(stringing, language),
    ...agreedChanges(job, language),
    ...measuredWire(scale, language),
    ...passes(settling, language),
    ...followUps(settling, language),
  ];
}

function chosenScale({ chosenScale: fact }: Job, { chosen }: StrungScale, { say, day }: Language): string[] {
  if (fact === undefined || chosen === undefined) return [];
  return [
    chosen === 'as found'
      ? say('The scale was left as it was found, decided on {day}: {reason}.', {
          day: day(fact.at),
          reason: withoutStop(fact.reason),
        })
      : say('The scale “{name}” was chosen on {day}: {reason}.', {
          name: chosen,
          day: day(fact.at),
          reason: withoutStop(fact.reason),
        }),
  ];
}

function pinsDriven({ pinsDriven: driven }: Job, language: Language): string[] {
  const { say, fixed } = language;
  return driven.map(({ firstKey, lastKey, pinDiameter_m, pinLength_m }) => {
    const notes = noteRuns(
      Array.from({ length: lastKey - firstKey + 1 }, (_, index) => firstKey + index),
      language,
    );
    const diameter = fixed(inMillimetres(metres(pinDiameter_m)), 2);
    return pinLength_m === undefined
      ? say('New pins of {diameter} mm were driven: {notes}.', { diameter, notes })
      : say('New pins of {diameter} × {length} mm were driven: {notes}.', {
          diameter,
          length: fixed(inMillimetres(metres(pinLength_m)), 0),
          notes,
        });
  });
}

function wiresStrung({ wires, mishaps }: Stringing, { say, day }: Language): string[] {
  const all = [...new Set(wires.values())].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
  const [first] = all;
  const last = all.at(-1);
  if (first === undefined || last === undefined) return [];
  const off = mishaps.filter(({ isOff }) => isOff).length;
  return [
    say(
      '{count, plural, one {One wire was strung} other {# wires were strung}}, noted from {first} to {last}{off, plural, =0 {} one {; one came off on the way} other {; # came off on the way}}.',
      { count: all.length, first: day(first.at), last: day(last.at), off },
    ),
  ];
}

function agreedChanges({ damages, changeAnswers }: Job, { say, day }: Language): string[] {
  return damages.flatMap(({ entry, what, whatToDo }) => {
    const answer = changeAnswers.find(({ damage }) => damage === entry);
    if (answer === undefined) return [];
    const values = { what: withoutStop(what), whatToDo: withoutStop(whatToDo), day: day(answer.on) };
    return [
      answer.answer === 'agreed'
        ? say('Found after the strip: {what}. Agreed on {day}: {whatToDo}.', values)
        : say('Found after the strip: {what}. Declined on {day}: {whatToDo}.', values),
    ];
  });
}

function measuredWire({ notes, notComputed }: StrungScale, { say }: Language): string[] {
  const measured = notes.filter(({ from }) => from === 'measured').length;
  return measured === 0
    ? []
    : [
        say('The new wire was measured at {measured} of {notes} notes.', {
          measured,
          notes: notes.length + notComputed.length,
        }),
      ];
}

function passes({ passes: all }: Settling, { say, day }: Language): string[] {
  const [first] = all;
  const last = all.at(-1);
  if (first === undefined || last === undefined) return [];
  return [
    say(
      '{count, plural, one {One pass was made, on {last}} other {# passes were made, from {first} to {last}}}; A4 = {pitch} Hz.',
      { count: all.length, first: day(first.on), last: day(last.on), pitch: last.referencePitch_hz },
    ),
  ];
}

const followUpWords = {
  'another pass': message('another pass'),
  tuning: message('tuning'),
  'a look': message('a look'),
} as const;

function followUps({ followUps: all }: Settling, { say, day }: Language): string[] {
  return all.flatMap(({ what, done }) =>
    done === undefined
      ? []
      : [say('Follow-up of {day}: {what}.', { day: day(done.on), what: say(followUpWords[what]) })],
  );
}

const withoutStop = (text: string): string => text.trim().replace(/\.$/, '');
