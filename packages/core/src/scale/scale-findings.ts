import { english, type Language } from '../words/index.ts';
import { breakShareFindings, outsideTableFindings } from './break-share-findings.ts';
import { tenorFindings } from './foreshortened-tenor.ts';
import { bridgeLoadFindings, totalLoadFindings } from './load-findings.ts';
import type { ScaleAnalysis } from './scale-analysis.ts';
import { type ScaleFinding, scaleRules } from './scale-finding.ts';
import { COMMON_SHOP_POLICY, type ShopPolicy } from './shop-policy.ts';
import { stepFindings } from './step-findings.ts';
import { strutFindings } from './strut-findings.ts';
import { fewerStringsFindings, unevenUnisonFindings } from './unison-findings.ts';

/**
 * Everything that stands out in a scale, in the order of `scaleRules`.
 *
 * @param analysis  of the notes that can be computed; rules that need neighbours skip a gap
 * @param policy    the shop's limits; `COMMON_SHOP_POLICY` when not given
 * @param language  of the sentences
 * @returns findings, each with its rule, figure, uncertainty, limit, whose limit it is, and a sentence
 *
 * Holds for: figures at pitch. Steps compare two figures; errors that both share (pitch, density) cancel in them.
 * Source: the limits name theirs; steps, shares and sums are definitions.
 */
export function scaleFindings(
  analysis: ScaleAnalysis,
  policy: ShopPolicy = COMMON_SHOP_POLICY,
  language: Language = english,
): ScaleFinding[] {
  const { limits } = policy;
  const { notes } = analysis;
  const found = [
    ...breakShareFindings(notes, limits, language),
    ...outsideTableFindings(notes, language),
    ...stepFindings(notes, limits, language),
    ...tenorFindings(notes, limits, language),
    ...unevenUnisonFindings(notes, limits, language),
    ...fewerStringsFindings(notes, language),
    ...strutFindings(analysis, limits, language),
    ...bridgeLoadFindings(analysis, language),
    ...totalLoadFindings(analysis, limits, language),
  ];
  return found.sort((a, b) => scaleRules.indexOf(a.rule) - scaleRules.indexOf(b.rule));
}
