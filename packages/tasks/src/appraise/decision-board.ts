import { inDegrees, inMillimetres, metres, radians } from '@becket/core';
import type { Job } from '@becket/journal';
import { placeInWords } from './compare-surveys.ts';
import type { DecisionReason } from './decision-reason.ts';
import { DECISION_SOURCE } from './decision-rules.ts';

/** Reasons that readings of crown and bearing give: a board without crown, a bridge that is not pressed. */
export function boardReasons(job: Job): DecisionReason[] {
  const found = job.readings.filter(({ stage }) => stage === 'as found');
  const flat = found.filter(({ quantity, value_si }) => quantity === 'soundboard-crown' && value_si <= 0);
  const lifted = found.filter(
    ({ quantity, value_si }) =>
      (quantity === 'bearing-angle' || quantity === 'bearing-rise') && value_si <= 0,
  );
  const base = {
    about: 'soundboard' as const,
    verdict: 'go with conditions' as const,
    deferTo: 'a specialist for soundboards',
    source: DECISION_SOURCE,
  };
  const reasons: DecisionReason[] = [];
  if (flat.length > 0) {
    const lowest = flat.reduce((low, one) => (one.value_si < low.value_si ? one : low));
    reasons.push({
      ...base,
      sentence: `The soundboard has no crown in ${flat.length} ${flat.length === 1 ? 'reading' : 'readings'}, least at ${placeInWords(lowest.place)}${lowest.loaded === true ? ' under the load of the strings' : ''}.`,
      figure: `${inMillimetres(metres(lowest.value_si)).toFixed(1)} mm`,
      entries: flat.map(({ entry }) => entry),
      condition: 'Crown is read again with the strings off, before the scale is settled.',
    });
  }
  if (lifted.length > 0) {
    const lowest = lifted[0]!;
    reasons.push({
      ...base,
      sentence: `There is no bearing in ${lifted.length} ${lifted.length === 1 ? 'reading' : 'readings'}, first at ${placeInWords(lowest.place)}.`,
      figure:
        lowest.quantity === 'bearing-angle'
          ? `${inDegrees(radians(lowest.value_si)).toFixed(1)}°`
          : `${inMillimetres(metres(lowest.value_si)).toFixed(1)} mm`,
      entries: lifted.map(({ entry }) => entry),
      condition: 'Why there is no bearing is found out before strings go on.',
    });
  }
  return reasons;
}
