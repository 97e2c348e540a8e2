import { deflectionFromRise, metres, type Radians, radians } from '@becket/core';
import type { AsFoundNote, Figure } from './as-found-record.ts';

/** The whole angle by which a bridge turns the strings of one note, from what was read there. */
export interface BearingAtNote {
  readonly angle: Radians;
  /** Undefined where nothing speaks for it. */
  readonly standardUncertainty: Radians | undefined;
  readonly from: 'angle' | 'rise';
}

/** A span this near to speaking and back length together joins the two supports [m]. */
const SAME_SPAN = 0.005;

/**
 * The bearing angle of a note: as it was read, else from a rise over its span.
 *
 *     θ = atan(h / a) + atan(h / b),  a + b = s;   u(θ) ≈ (1/a + 1/b) · u(h)
 *
 * h the rise and s the span that were read. Where s is the speaking and the back length together, the span joins the two
 * supports and those are a and b. A shorter one is a gauge laid over the bridge, which is taken to stand in its middle,
 * a = b = s/2: of all places the one with the smallest angle, so the force is never overstated.
 *
 * Readings on a board that the strings do not press down are left out: it stands higher then than it does under load.
 * Undefined where nothing else was read, or where a rise came without its span.
 * Source: geometry, as in `deflectionFromRise`; the place of the bridge in the span is our own rule.
 */
export function bearingAtNote(note: AsFoundNote): BearingAtNote | undefined {
  const angle = underLoad(note.figures['bearing-angle']);
  if (angle !== undefined)
    return {
      angle: radians(angle.value),
      standardUncertainty: angle.uncertainty === undefined ? undefined : radians(angle.uncertainty),
      from: 'angle',
    };
  const rise = note.figures['bearing-rise'];
  const pressed = rise?.readings.filter(({ loaded, span_m }) => loaded !== false && span_m !== undefined);
  if (rise === undefined || pressed === undefined || pressed.length === 0) return undefined;
  const bends = pressed.map(({ value_si, span_m }) => {
    const { front, back } = spansOf(note, span_m!);
    return {
      angle: deflectionFromRise({
        rise: metres(value_si),
        spanFront: metres(front),
        spanBack: metres(back),
      }),
      perRise: 1 / front + 1 / back,
    };
  });
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const perRise = mean(bends.map((bend) => bend.perRise));
  return {
    angle: radians(mean(bends.map((bend) => bend.angle))),
    standardUncertainty: rise.standardUncertainty ? radians(perRise * rise.standardUncertainty) : undefined,
    from: 'rise',
  };
}

function spansOf({ figures }: AsFoundNote, span: number): { front: number; back: number } {
  const [speaking, back] = [figures['speaking-length']?.value, figures['back-length']?.value];
  const joinsSupports =
    speaking !== undefined &&
    back !== undefined &&
    speaking > 0 &&
    back > 0 &&
    Math.abs(speaking + back - span) <= SAME_SPAN;
  return joinsSupports ? { front: speaking, back } : { front: span / 2, back: span / 2 };
}

/** A figure without its readings on a board that was not pressed down. */
function underLoad(
  figure: Figure | undefined,
): { value: number; uncertainty: number | undefined } | undefined {
  if (figure === undefined) return undefined;
  const pressed = figure.readings.filter(({ loaded }) => loaded !== false);
  if (pressed.length === 0) return undefined;
  // Something that speaks for all readings together speaks for some of them too.
  const uncertainty = figure.standardUncertainty || undefined;
  if (pressed.length === figure.readings.length) return { value: figure.value, uncertainty };
  return { value: pressed.reduce((sum, { value_si }) => sum + value_si, 0) / pressed.length, uncertainty };
}
