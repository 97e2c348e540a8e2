import { type Metres, metres } from '@becket/core';
import type { Job } from '@becket/journal';
import { pinChoice } from '../appraise/pin-choice.ts';

/** Diameter of the new pin of a string; undefined where none is chosen yet. */
export type NewPinOf = (string: { readonly key: number; readonly string: number }) => Metres | undefined;

/** The new pins of a piano, as they are chosen. */
export function newPinDiameters(job: Job): NewPinOf {
  const { counts, remedies } = pinChoice(job);
  const known = counts.bySize.filter(({ diameter }) => diameter !== undefined);
  const usual = known.length === 1 ? known[0]!.diameter : undefined;
  return ({ key, string }) => {
    const own = remedies.find((one) => one.key === key && one.string === string)?.pinDiameter_m;
    return own === undefined ? usual : metres(own);
  };
}
