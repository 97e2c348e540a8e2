import { inMillimetres, metres } from '@becket/core';
import { surveyThings } from '@becket/journal';
import { type Finding, placeInWords, type SurveyComparison } from './compare-surveys.ts';
import type { DecisionReason } from './decision-reason.ts';
import { DECISION_SOURCE, FINDING_RULES } from './decision-rules.ts';

/** Reasons that the survey gives: what stops the job, what the rules say, and what somebody noted to be done first. */
export function findingReasons({ lines }: SurveyComparison): DecisionReason[] {
  return lines.flatMap(({ now, earlier, change, sentence, repair }): DecisionReason[] => {
    // What could not be seen now says nothing against what was seen before.
    const finding = now?.answer.is === 'could not be seen' ? (earlier ?? now) : (now ?? earlier);
    if (finding === undefined || finding.answer.is !== 'seen') return [];
    const reason = reasonOf(finding);
    const grown: DecisionReason[] =
      change === 'grew'
        ? [
            {
              about: aboutOf(finding),
              verdict: 'go with conditions',
              sentence,
              figure: undefined,
              entries: [earlier?.entry, now?.entry].filter((entry) => entry !== undefined),
              condition: `Why it grows is found out first: ${surveyThings[finding.thing].label}, ${placeInWords(finding.place)}.`,
              deferTo: undefined,
              source: DECISION_SOURCE,
            },
          ]
        : [];
    const failed: DecisionReason[] =
      repair === 'fails'
        ? [
            {
              about: aboutOf(finding),
              verdict: 'go with conditions',
              sentence: `An earlier repair fails: ${named(finding)}.`,
              figure: undefined,
              entries: [finding.entry],
              condition: `The repair is done anew: ${surveyThings[finding.thing].label}, ${placeInWords(finding.place)}.`,
              deferTo: undefined,
              source: DECISION_SOURCE,
            },
          ]
        : [];
    return [...reason, ...grown, ...failed];
  });
}

function reasonOf(finding: Finding): DecisionReason[] {
  const { answer, entry, thing } = finding;
  if (answer.is !== 'seen') return [];
  const base = {
    about: aboutOf(finding),
    figure:
      answer.extent_m === undefined ? undefined : `${inMillimetres(metres(answer.extent_m)).toFixed(0)} mm`,
    entries: [entry],
    source: DECISION_SOURCE,
  };
  const rule = FINDING_RULES.find(({ things }) => things.includes(thing));
  if (answer.whatToDo === 'stops the job')
    return [
      {
        ...base,
        verdict: 'stop',
        sentence: `It was noted as stopping the job: ${named(finding)}.`,
        condition: rule?.condition ?? `It is settled first: ${named(finding)}.`,
        deferTo: rule?.deferTo,
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
      sentence: `${capital(named(finding))} (${answer.gravity}).`,
      condition:
        byRule && rule !== undefined
          ? rule.condition
          : `Dealt with ${answer.whatToDo}: ${surveyThings[thing].label}, ${placeInWords(finding.place)}.`,
      deferTo: byRule ? rule?.deferTo : undefined,
    },
  ];
}

function named({ thing, place, answer, copiedFrom }: Finding): string {
  const what = answer.is === 'seen' ? `, ${answer.what}` : '';
  const day = copiedFrom === undefined ? '' : `, as of ${copiedFrom}`;
  return `${surveyThings[thing].label}, ${placeInWords(place)}${what}${day}`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function aboutOf({ thing }: Finding): DecisionReason['about'] {
  const { part } = surveyThings[thing];
  if (part === 'plate') return 'plate';
  if (part === 'pin-block') return 'pin block';
  return part === 'soundboard' || part === 'ribs' ? 'soundboard' : 'structure';
}
