import {
  type FactOf,
  type Job,
  type Standing,
  type SurveyPart,
  type SurveyThing,
  surveyParts,
  surveyThingNames,
  surveyThings,
} from '@becket/journal';

export type StandingFinding = Standing<FactOf<'finding'>>;
export type SeenFinding = StandingFinding & {
  readonly answer: Extract<StandingFinding['answer'], { is: 'seen' }>;
};

export const isSeen = (finding: StandingFinding): finding is SeenFinding => finding.answer.is === 'seen';
export const couldNotBeSeen = ({ answer }: StandingFinding): boolean => answer.is === 'could not be seen';

/** What the survey says of one part: its lines, and what nobody has looked at. */
export interface SurveyOfPart {
  readonly part: SurveyPart;
  readonly name: (typeof surveyParts)[SurveyPart];
  /** Lines of this survey; those copied from an earlier one are not among them. */
  readonly findings: readonly StandingFinding[];
  readonly notLookedAt: readonly SurveyThing[];
}

/** Every part of a survey in its order, whether it was looked at or not. */
export function surveyByPart({ findings }: Job): SurveyOfPart[] {
  return (Object.keys(surveyParts) as SurveyPart[]).map((part) => {
    const things = surveyThingNames.filter((thing) => surveyThings[thing].part === part);
    const own = findings.filter(
      ({ thing, copiedFrom }) => things.includes(thing) && copiedFrom === undefined,
    );
    return {
      part,
      name: surveyParts[part],
      findings: [...own].sort((a, b) => things.indexOf(a.thing) - things.indexOf(b.thing)),
      notLookedAt: things.filter((thing) => !own.some((one) => one.thing === thing)),
    };
  });
}

/** The photos of the survey, numbered in the order in which its lines name them. */
export function numberedPhotos(job: Job): ReadonlyMap<string, number> {
  const numbers = new Map<string, number>();
  for (const { findings } of surveyByPart(job))
    for (const { photos = [] } of findings)
      for (const digest of photos) if (!numbers.has(digest)) numbers.set(digest, numbers.size + 1);
  return numbers;
}

export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Ends a text of somebody else's as a sentence. */
export const asSentence = (text: string): string =>
  /[.!?…]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`;
