import { inInches, type Metres, noteName } from '@becket/core';
import type { Job } from '@becket/journal';
import type { FactList } from '../page-tree.ts';

/** The instrument in names and values. What nobody has said is printed as unknown. */
export function pianoFacts({ piano }: Job): FactList['rows'] {
  if (piano === undefined) return [{ name: 'Piano', value: 'not described yet' }];
  const { form, size_m, maker, model, serialNumber, year, firstKey, lastKey, referencePitch_hz } = piano;
  const unknown = 'unknown';
  return [
    { name: 'Piano', value: [maker ?? 'maker unknown', model].filter(Boolean).join(', ') },
    {
      name: form === 'grand' ? 'Form and length' : 'Form and height',
      value: `${form}, ${size_m === undefined ? unknown : `${size_m.toFixed(2)} m (${inInches(size_m as Metres).toFixed(1)} in)`}`,
    },
    { name: 'Serial number', value: serialNumber ?? unknown },
    { name: 'Year', value: year === undefined ? unknown : String(year) },
    {
      name: 'Compass',
      value: `${lastKey - firstKey + 1} notes, ${noteName(firstKey)} to ${noteName(lastKey)} (keys ${firstKey} to ${lastKey})`,
    },
    { name: 'Pitch it is strung for', value: `A4 = ${referencePitch_hz} Hz` },
  ];
}
