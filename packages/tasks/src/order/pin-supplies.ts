import {
  COMMON_PIN_LENGTHS,
  english,
  type Language,
  type Message,
  medianOf,
  message,
  pinsNeeded,
} from '@becket/core';
import type { Job, StockItem } from '@becket/journal';
import { pinChoice } from '../appraise/pin-choice.ts';
import type { OrderPolicy } from './order-policy.ts';
import { sourcesInWords } from './sources-in-words.ts';
import { lineOf, type SupplyLine } from './supply-line.ts';

/**
 * Tuning pins by size and length, with spares and test pins; bushings and plugs that remedies ask for.
 *
 * The length is that of the pins driven last, or else the listed length next to those as found; a pin whose size nobody
 * has settled is a line without an item.
 */
export function pinSupplies(
  job: Job,
  { pins: allowance, testPins, source }: OrderPolicy,
  language: Language = english,
): SupplyLine[] {
  const { say } = language;
  const { counts, measured } = pinChoice(job, { language });
  const { length_m, sentence } = pinLength(job, language);
  const readings = job.readings.filter(({ quantity }) => quantity === 'pin-diameter');
  const lines = counts.bySize.map(({ diameter, pins, byRemedy, assumed }): SupplyLine => {
    if (diameter === undefined)
      return {
        id: 'tuning pins of unknown size',
        group: 'tuning pins',
        what: say('Tuning pins, size not settled'),
        item: undefined,
        unit: 'piece',
        needed: pins,
        extra: [],
        total: undefined,
        because:
          measured.length === 0
            ? say('no pin diameter and torque has been read, so that no size can be advised')
            : say('the rule for sizes gives no advice for these pins'),
        assumed: [],
        from: [],
      };
    const item: StockItem = {
      kind: 'tuning pin',
      diameter_m: diameter,
      ...(length_m === undefined ? {} : { length_m }),
    };
    const driven = job.testPins.some(({ pinDiameter_m }) => Math.abs(pinDiameter_m - diameter) < 5e-6);
    const { spares, test, total } = pinsNeeded({
      needed: pins,
      test: driven ? 0 : testPins,
      allowance,
    });
    return {
      ...lineOf(item, 'tuning pins', language),
      needed: pins,
      extra: [
        {
          name: say('spares ({source})', { source: sourcesInWords(allowance.source, language) }),
          quantity: spares,
        },
        { name: say('test pins'), quantity: test },
      ].filter(({ quantity }) => quantity > 0),
      total,
      because: say(
        'one a string, by the rule for sizes{count, plural, =0 {} other {; # by a remedy of their own}}',
        { count: byRemedy },
      ),
      assumed: [
        ...(assumed === 0
          ? []
          : [
              say('{count} of {all} pins were not measured and are taken as the nearest that was.', {
                count: assumed,
                all: pins,
              }),
            ]),
        sentence,
      ],
      from: readings.flatMap(({ place, entry }) =>
        place.key === undefined ? [] : [{ key: place.key, string: place.string, entries: [entry] }],
      ),
    };
  });
  const mended = (name: Message, quantity: number): SupplyLine[] =>
    quantity === 0
      ? []
      : [
          {
            ...lineOf({ kind: 'other', name, unit: 'piece' }, 'felts and bushings', language),
            needed: quantity,
            extra: [],
            total: quantity,
            because: say('remedies noted for single pins ({source} add none)', {
              source: sourcesInWords(source, language),
            }),
            assumed: [],
            from: job.pinRemedies
              .filter(({ remedy }) => name.toLowerCase().includes(remedy))
              .map(({ key, string, entry }) => ({ key, string, entries: [entry] })),
          },
        ];
  return [
    ...lines,
    ...mended(message('Bushing for an oversized pin hole'), counts.bushings),
    ...mended(message('Plug for a pin hole'), counts.plugs),
  ];
}

function pinLength(job: Job, { say, fixed }: Language): { length_m: number | undefined; sentence: string } {
  const driven = job.pinsDriven.findLast(({ pinLength_m }) => pinLength_m !== undefined)?.pinLength_m;
  if (driven !== undefined) return { length_m: driven, sentence: say('Length as of the pins driven last.') };
  const read = job.readings
    .filter(({ quantity, stage }) => quantity === 'pin-length' && stage === 'as found')
    .map(({ value_si }) => value_si);
  if (read.length === 0)
    return { length_m: undefined, sentence: say('No pin length has been read: choose it before ordering.') };
  const found = medianOf(read);
  const listed = COMMON_PIN_LENGTHS.reduce((best, one) =>
    Math.abs(one.length_m - found) < Math.abs(best.length_m - found) ? one : best,
  );
  return {
    length_m: listed.length_m,
    sentence: say(
      'Length {listed}, next to the {found} mm of the pins as found: check it against the depth of the holes.',
      { listed: listed.label, found: fixed(found * 1000, 1) },
    ),
  };
}
