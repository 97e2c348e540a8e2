import { inInches, type Language, type Metres, noteName } from '@becket/core';
import type { Job } from '@becket/journal';
import type { FactList } from '../page-tree.ts';

/** The instrument in names and values, for somebody of the trade. What nobody has said is printed as unknown. */
export function pianoFacts(job: Job, language: Language): FactList['rows'] {
  const { say, plain } = language;
  const { piano } = job;
  if (piano === undefined) return pianoForOwner(job, language);
  const { firstKey, lastKey, referencePitch_hz } = piano;
  return [
    ...pianoForOwner(job, language),
    {
      name: say('Compass'),
      value: say('{notes} notes, {first} to {last} (keys {firstKey} to {lastKey})', {
        notes: String(lastKey - firstKey + 1),
        first: noteName(firstKey),
        last: noteName(lastKey),
        firstKey: String(firstKey),
        lastKey: String(lastKey),
      }),
    },
    { name: say('Pitch it is strung for'), value: `A4 = ${plain(referencePitch_hz)} Hz` },
  ];
}

/** The instrument in names and values, as far as its owner knows it. */
export function pianoForOwner({ piano }: Job, { say, fixed }: Language): FactList['rows'] {
  if (piano === undefined) return [{ name: say('Piano'), value: say('not described yet') }];
  const { form, size_m, maker, model, serialNumber, year } = piano;
  const unknown = say('unknown');
  const size =
    size_m === undefined ? unknown : `${fixed(size_m, 2)} m (${fixed(inInches(size_m as Metres), 1)} in)`;
  return [
    { name: say('Piano'), value: [maker ?? say('maker unknown'), model].filter(Boolean).join(', ') },
    {
      name: form === 'grand' ? say('Form and length') : say('Form and height'),
      value: `${say(form)}, ${size}`,
    },
    { name: say('Serial number'), value: serialNumber ?? unknown },
    { name: say('Year'), value: year === undefined ? unknown : String(year) },
  ];
}
