import type { Language } from '../words/index.ts';
import { kilonewtonText, limitText, loadText, percent } from './finding-words.ts';
import type { ScaleAnalysis } from './scale-analysis.ts';
import { forInformation, isClearOf, type ScaleFinding } from './scale-finding.ts';
import type { ScaleLimits } from './shop-policy.ts';

/** What every bridge bears, and its share of the whole. */
export function bridgeLoadFindings(
  { notes, bridges, total }: ScaleAnalysis,
  language: Language,
): ScaleFinding[] {
  return bridges.map((bridge) =>
    forInformation({
      rule: 'load by bridge',
      keys: notes.filter((note) => note.note.bridge === bridge.name).map((note) => note.key),
      figure: bridge.load,
      standardUncertainty: bridge.loadUncertainty,
      unit: 'N',
      sentence: language.say("On the bridge '{bridge}' pull {load}, {share} of the whole.", {
        bridge: bridge.name,
        load: loadText(bridge, language),
        share: percent(bridge.load / total, language),
      }),
    }),
  );
}

/** A compass with at least this many notes is a whole one: the smallest usual is 85. */
const WHOLE_COMPASS = 85;

/** What all strings together pull: too much is judged always, too little only of a whole compass. */
export function totalLoadFindings(
  { total, totalUncertainty, totalStrings, notes }: ScaleAnalysis,
  limits: ScaleLimits,
  language: Language,
): ScaleFinding[] {
  if (notes.length === 0) return [];
  const isWhole = notes.length >= WHOLE_COMPASS;
  const isHigh = total > limits.highestTotalLoad.value;
  const isLow = isWhole && total < limits.lowestTotalLoad.value;
  const limit = isLow ? limits.lowestTotalLoad : limits.highestTotalLoad;
  return [
    {
      rule: 'total load',
      weight: isHigh || isLow ? 'beyond a limit' : 'for information',
      keys: notes.map((note) => note.key),
      figure: total,
      standardUncertainty: totalUncertainty,
      unit: 'N',
      limit: isHigh || isLow ? limit : undefined,
      isClear: isClearOf(total, limit.value, totalUncertainty),
      sentence: language.say(
        '{compass, select, whole {All {strings} strings together pull} other {The {notes} notes that can be computed have {strings} strings, which together pull}} {load}{judged, select, high {, over {limit}} low {, under {limit}} other {}}.',
        {
          compass: isWhole ? 'whole' : 'part',
          strings: totalStrings,
          notes: notes.length,
          load:
            kilonewtonText(total, language) +
            (totalUncertainty === undefined ? '' : ` ± ${kilonewtonText(totalUncertainty, language)}`),
          judged: isHigh ? 'high' : isLow ? 'low' : 'not',
          limit: limitText(limit, language),
        },
      ),
      remark: '',
    },
  ];
}
