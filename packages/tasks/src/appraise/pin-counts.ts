import { type Metres, metres, type PinSizePolicy, pinSizeGuess } from '@becket/core';
import type { Job } from '@becket/journal';
import type { PinField } from './pin-field.ts';
import type { PinGroup } from './pin-groups.ts';

/** How many pins of one size are needed. */
export interface PinCount {
  /** Listed size; undefined for pins of a group that has no advice yet. */
  readonly label: string | undefined;
  readonly diameter: Metres | undefined;
  /** Whole field: with remedies, and with pins nobody measured put to the nearest that was. */
  readonly pins: number;
  /** Of these by a remedy of their own. */
  readonly byRemedy: number;
  /** Of these because the nearest measured pin is: assumed. */
  readonly assumed: number;
}

export interface PinCounts {
  readonly bySize: readonly PinCount[];
  readonly bushings: number;
  readonly plugs: number;
  readonly measured: number;
  readonly pins: number;
}

/**
 * Pins to buy by size, without spares.
 *
 * A pin that nobody measured is taken to be as the nearest measured one: an assumption that `assumed` counts. A plugged or
 * bushed hole gets a pin of its group unless the remedy names another.
 */
export function pinCounts(
  job: Job,
  field: PinField,
  groups: readonly PinGroup[],
  policy: PinSizePolicy,
): PinCounts {
  const measured = groups.flatMap((group) =>
    group.pins.flatMap((pin) => {
      const index = field.indexOf(pin.key, pin.string);
      return index === undefined ? [] : [{ index, group, isNote: pin.string === undefined, key: pin.key }];
    }),
  );
  const remedies = new Map(job.pinRemedies.map((one) => [`${one.key}/${one.string}`, one]));
  const bySize = new Map<string, { -readonly [K in keyof PinCount]: PinCount[K] }>();
  const add = (
    label: string | undefined,
    diameter: Metres | undefined,
    how: 'byRemedy' | 'assumed' | undefined,
  ) => {
    const name = label ?? '';
    const count = bySize.get(name) ?? { label, diameter, pins: 0, byRemedy: 0, assumed: 0 };
    count.pins += 1;
    if (how !== undefined) count[how] += 1;
    bySize.set(name, count);
  };
  field.pins.forEach(({ key, string }, index) => {
    const own = remedies.get(`${key}/${string}`);
    if (own?.pinDiameter_m !== undefined) {
      const { size } = pinSizeGuess(metres(own.pinDiameter_m), policy.sizes);
      add(size.label, metres(size.diameter_m), 'byRemedy');
      return;
    }
    const nearest = nearestTo(index, measured);
    const advice = nearest?.group.advice;
    const isMeasured =
      nearest !== undefined && (nearest.index === index || (nearest.isNote && nearest.key === key));
    const to = advice?.kind === 'size up' ? advice.to : undefined;
    add(to?.label, to?.diameter, isMeasured ? undefined : 'assumed');
  });
  return {
    bySize: [...bySize.values()].sort((a, b) => (a.diameter ?? 0) - (b.diameter ?? 0)),
    bushings: job.pinRemedies.filter(({ remedy }) => remedy === 'bushing').length,
    plugs: job.pinRemedies.filter(({ remedy }) => remedy === 'plug').length,
    measured: measured.length,
    pins: field.pins.length,
  };
}

function nearestTo<P extends { readonly index: number }>(
  index: number,
  measured: readonly P[],
): P | undefined {
  return measured.reduce<P | undefined>(
    (best, one) =>
      best === undefined || Math.abs(one.index - index) < Math.abs(best.index - index) ? one : best,
    undefined,
  );
}
