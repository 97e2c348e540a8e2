import { type Cents, cents, requireNotNegative, requireWithin } from '../units/index.ts';

/** How far above pitch to leave a section, so that it comes to rest at its pitch. */
export interface NextOverpull {
  readonly overpull: Cents;
  readonly standardUncertainty: Cents;
  /** What it would be without the limit. */
  readonly unlimited: Cents;
  readonly isLimited: boolean;
}

/**
 * How far above pitch a section is to be left, so that it falls back to its pitch.
 *
 *     a = −k · b / (1 − k)            since a − k · (a − b) = 0
 *     u(a)² = (b / (1 − k)² · u(k))² + (k / (1 − k) · u(b))²
 *
 * @param section.before               b, where it stands [cents], below pitch negative
 * @param section.beforeUncertainty    u(b) [cents], ≥ 0
 * @param section.share                k, share of a raise that is lost again, 0 to 0.6; from `fallBack`
 * @param section.shareUncertainty     u(k), ≥ 0
 * @param section.limit                highest offset at which no string passes its share of the break load [cents]; from
 *                                     `overpullLimit`. Never passed; where it lies below pitch the overpull is 0
 * @returns a [cents above pitch], 0 for a section at pitch or above: that one is let down to its pitch
 *
 * Holds for: as `fallBack`. Error: u(a), without what the limit cuts off.
 * Throws: RangeError when k is outside 0 to 0.6, or an uncertainty is negative or not finite.
 * Source: the equation of `fallBack`, solved for a.
 * @example nextOverpull({ before: cents(-30), beforeUncertainty: cents(1), share: 0.25, shareUncertainty: 0.1, limit: cents(60) }).overpull  // = 10
 */
export function nextOverpull(section: {
  before: Cents;
  beforeUncertainty: Cents;
  share: number;
  shareUncertainty: number;
  limit: Cents;
}): NextOverpull {
  const task = 'how far to overpull a section';
  const { before } = section;
  const share = requireWithin(section.share, 0, 0.6, 'the share that is lost again', task);
  const shareUncertainty = requireNotNegative(section.shareUncertainty, 'the uncertainty of the share', task);
  const beforeUncertainty = requireNotNegative(
    section.beforeUncertainty,
    'the uncertainty of the offset',
    task,
  );
  const left = 1 - share;
  const unlimited = before >= 0 ? 0 : (-share * before) / left;
  const overpull = Math.max(0, Math.min(unlimited, section.limit));
  return {
    overpull: cents(overpull),
    standardUncertainty: cents(
      before >= 0
        ? 0
        : Math.hypot((before / left ** 2) * shareUncertainty, (share / left) * beforeUncertainty),
    ),
    unlimited: cents(unlimited),
    isLimited: overpull < unlimited,
  };
}
