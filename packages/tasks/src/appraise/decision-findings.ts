import { english, inMillimetres, type Language, metres } from '@becket/core';
import { surveyThings } from '@becket/journal';
import { type Finding, placeInWords, type SurveyComparison } from './compare-surveys.ts';
import type { DecisionReason } from './decision-reason.ts';
import { DECISION_SOURCE, FINDING_RULES } from './decision-rules.ts';

/** Reasons that the survey gives: what stops the job, what the rules say, and what somebody noted to be done first. */
export function findingReasons({ lines }: SurveyComparison, language: Language = english): DecisionReason[] {
  const { say } = language;
  const source = say(DECISION_SOURCE);
  return lines.flatMap(({ now, earlier, change, sentence, repair }): DecisionReason[] => {
    // What could not be seen now says nothing against what was seen before.
    const finding = now?.answer.is === 'could not be seen' ? (earlier ?? now) : (now ?? earlier);
    if (finding === undefined || finding.answer.is !== 'seen') return [];
    const reason = reasonOf(finding, language);
    const thing = say(surveyThings[finding.thing].label);
    const place = placeInWords(finding.place, language);
    const grown: DecisionReason[] =
      change === 'grew'
        ? [
            {
              about: aboutOf(finding),
              verdict: 'go with conditions',
              sentence,
              figure: undefined,
              entries: [earlier?.entry, now?.entry].filter((entry) => entry !== undefined),
              condition: say('Why it grows is found out first: {thing}, {place}.', { thing, place }),
              deferTo: undefined,
              source,
            },
          ]
        : [];
    const failed: DecisionReason[] =
      repair === 'fails'
        ? [
            {
              about: aboutOf(finding),
              verdict: 'go with conditions',
              sentence: say('An earlier repair fails: {finding}.', { finding: named(finding, language) }),
              figure: undefined,
              entries: [finding.entry],
              condition: say('The repair is done anew: {thing}, {place}.', { thing, place }),
              deferTo: undefined,
              source,
            },
          ]
        : [];
    return [...reason, ...grown, ...failed];
  });
}

function reasonOf(finding: Finding, language: Language): DecisionReason[] {
  const { say, fixed } = language;
  const { answer, entry, thing } = finding;
  if (answer.is !== 'seen') return [];
  const base = {
    about: aboutOf(finding),
    figure:
      answer.extent_m === undefined ? undefined : `${fixed(inMillimetres(metres(answer.extent_m)), 0)} mm`,
    entries: [entry],
    source: say(DECISION_SOURCE),
  };
  const rule = FINDING_RULES.find(({ things }) => things.includes(thing));
  if (answer.whatToDo === 'stops the job')
    return [
      {
        ...base,
        verdict: 'stop',
        sentence: say('It was noted as stopping the job: {finding}.', { finding: named(finding, language) }),
        condition:
          rule === undefined
            ? say('It is settled first: {finding}.', { finding: named(finding, language) })
            : say(rule.condition),
        deferTo: rule?.deferTo && say(rule.deferTo),
      },
    ];
  const verdict = rule?.verdict[answer.gravity];
  const isToBeDone = answer.whatToDo !== 'nothing';
  if (verdict === undefined && !isToBeDone) return [];
  const byRule = verdict !== undefined && verdict !== 'go';
  return [
    {
      ...base,
      verdict: verdict ?? 'go with conditions',
      sentence: `${capital(named(finding, language))} (${say(answer.gravity)}).`,
      condition:
        byRule && rule !== undefined
          ? say(rule.condition)
          : say('Dealt with {when}: {thing}, {place}.', {
              when: say(answer.whatToDo),
              thing: say(surveyThings[thing].label),
              place: placeInWords(finding.place, language),
            }),
      deferTo: byRule && rule?.deferTo ? say(rule.deferTo) : undefined,
    },
  ];
}

function named({ thing, place, answer, copiedFrom }: Finding, language: Language): string {
  const { say, day } = language;
  return [
    say(surveyThings[thing].label),
    placeInWords(place, language),
    ...(answer.is === 'seen' ? [answer.what] : []),
    ...(copiedFrom === undefined ? [] : [say('as of {day}', { day: day(copiedFrom) })]),
  ].join(', ');
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function aboutOf({ thing }: Finding): DecisionReason['about'] {
  const { part } = surveyThings[thing];
  if (part === 'plate') return 'plate';
  if (part === 'pin-block') return 'pin block';
  return part === 'soundboard' || part === 'ribs' ? 'soundboard' : 'structure';
}
