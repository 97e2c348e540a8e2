import { english, inMillimetres, type Language, message, noteName } from '@becket/core';
import type { StrungDeviation } from '@becket/journal';

const quantityWords = {
  wire: message('wire'),
  core: message('core'),
  'over all': message('over all'),
  'speaking length': message('speaking length'),
} as const satisfies Record<StrungDeviation['quantity'], string>;

/** One deviation in a sentence: what was measured, and what was chosen. */
export function deviationInWords(
  { key, quantity, chosen, measured }: StrungDeviation,
  { say, fixed }: Language = english,
): string {
  const digits = quantity === 'speaking length' ? 1 : 3;
  return say('{note}, {quantity}: {measured} mm measured, {chosen} mm chosen.', {
    note: noteName(key),
    quantity: say(quantityWords[quantity]),
    measured: fixed(inMillimetres(measured), digits),
    chosen: fixed(inMillimetres(chosen), digits),
  });
}
