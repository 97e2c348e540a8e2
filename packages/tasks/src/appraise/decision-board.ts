import { english, inDegrees, inMillimetres, type Language, metres, radians } from '@becket/core';
import type { Job } from '@becket/journal';
import { placeInWords } from './compare-surveys.ts';
import type { DecisionReason } from './decision-reason.ts';
import { DECISION_SOURCE } from './decision-rules.ts';

/** Reasons that readings of crown and bearing give: a board without crown, a bridge that is not pressed. */
export function boardReasons(job: Job, language: Language = english): DecisionReason[] {
  const { say, fixed } = language;
  const millimetresText = (value_m: number) => `${fixed(inMillimetres(metres(value_m)), 1)} mm`;
  const found = job.readings.filter(({ stage }) => stage === 'as found');
  const flat = found.filter(({ quantity, value_si }) => quantity === 'soundboard-crown' && value_si <= 0);
  const lifted = found.filter(
    ({ quantity, value_si }) =>
      (quantity === 'bearing-angle' || quantity === 'bearing-rise') && value_si <= 0,
  );
  const base = {
    about: 'soundboard' as const,
    verdict: 'go with conditions' as const,
    deferTo: say('a specialist for soundboards'),
    source: say(DECISION_SOURCE),
  };
  const reasons: DecisionReason[] = [];
  if (flat.length > 0) {
    const lowest = flat.reduce((low, one) => (one.value_si < low.value_si ? one : low));
    reasons.push({
      ...base,
      sentence: say(
        'The soundboard has no crown in {count, plural, one {# reading} other {# readings}}, least at {place}{loaded, select, yes { under the load of the strings} other {}}.',
        {
          count: flat.length,
          place: placeInWords(lowest.place, language),
          loaded: lowest.loaded === true ? 'yes' : 'no',
        },
      ),
      figure: millimetresText(lowest.value_si),
      entries: flat.map(({ entry }) => entry),
      condition: say('Crown is read again with the strings off, before the scale is settled.'),
    });
  }
  if (lifted.length > 0) {
    const lowest = lifted[0]!;
    reasons.push({
      ...base,
      sentence: say(
        'There is no bearing in {count, plural, one {# reading} other {# readings}}, first at {place}.',
        { count: lifted.length, place: placeInWords(lowest.place, language) },
      ),
      figure:
        lowest.quantity === 'bearing-angle'
          ? `${fixed(inDegrees(radians(lowest.value_si)), 1)}°`
          : millimetresText(lowest.value_si),
      entries: lifted.map(({ entry }) => entry),
      condition: say('Why there is no bearing is found out before strings go on.'),
    });
  }
  return reasons;
}
