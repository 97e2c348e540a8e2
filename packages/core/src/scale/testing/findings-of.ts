import type { PlainString } from '../../strings/index.ts';
import {
  analyseScale,
  COMMON_SHOP_POLICY,
  type ScaleFinding,
  type ScaleNote,
  type ScaleRule,
  type ShopPolicy,
  scaleFindings,
  withLimit,
} from '../index.ts';
import { changed, inventedGrand } from './invented-grand.ts';

export const quick = { uncertainties: 'left out', woundStrings: 'core formula' } as const;

/** Limits that the invented grand does not touch, so that a test sees only what it has changed. */
export const lenient: ShopPolicy = (
  [
    ['highestBreakShare', 0.95],
    ['lowestBreakSharePlain', 0.05],
    ['lowestBreakShareWound', 0.05],
    ['largestTensionStepOverBreak', 1],
    ['largestTensionStepInSection', 0.5],
    ['largestInharmonicityStepOverBreak', 5],
    ['largestImpedanceStepOverBreak', 5],
    ['leastLengthGrowthInTenor', 0.01],
    ['largestLoadStepOverStrut', 2],
  ] as const
).reduce((policy, [name, value]) => withLimit(policy, name, value, 'test'), COMMON_SHOP_POLICY);

export const grand = inventedGrand();

export function findings(notes: readonly ScaleNote[], policy: ShopPolicy): ScaleFinding[] {
  return scaleFindings(analyseScale(notes, quick), policy);
}

export function beyond(notes: readonly ScaleNote[], policy: ShopPolicy): ScaleFinding[] {
  return findings(notes, policy).filter(({ weight }) => weight === 'beyond a limit');
}

export function ofRule(all: readonly ScaleFinding[], rule: ScaleRule): ScaleFinding[] {
  return all.filter((finding) => finding.rule === rule);
}

export function withString(key: number, change: Partial<PlainString>): ScaleNote[] {
  return changed(grand, (note) =>
    note.key === key ? { string: { ...(note.string as PlainString), ...change } } : undefined,
  );
}
