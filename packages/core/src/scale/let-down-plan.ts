import {
  type Metres,
  type Newtons,
  newtons,
  type Pascals,
  type Radians,
  radians,
  requirePositive,
  requireWithin,
} from '../units/index.ts';
import { type Message, message } from '../words/index.ts';

/** What a let-down plan needs to know of one string. */
export interface LetDownString {
  readonly tension: Newtons;
  /** The whole stretched wire, pin to hitch pin [m]. */
  readonly wireLength: Metres;
  /** Steel diameter; of a wound string its core. */
  readonly steelDiameter: Metres;
  readonly pinDiameter: Metres;
}

export interface LetDownSection {
  readonly section: string;
  readonly strings: readonly LetDownString[];
}

/** One section's turn within one pass. */
export interface LetDownStep {
  readonly section: string;
  /** Turn of each pin towards flat in this pass: smallest, middle and largest of the section's strings. */
  readonly turn: { readonly least: Radians; readonly middle: Radians; readonly most: Radians };
  /** Load of this section after the step. */
  readonly load: Newtons;
  /** Load of the whole plate after the step. */
  readonly totalLoad: Newtons;
}

export interface LetDownPass {
  /** 1 for the first. */
  readonly pass: number;
  readonly steps: readonly LetDownStep[];
}

/** Said wherever a let-down plan is shown. Common practice, no source. */
export const letDownCautions: readonly Message[] = [
  message(
    'A wire under tension stores enough energy to injure: wear eye protection and keep your face out of its line.',
  ),
  message('Never cut a string under tension; let it down at the pin first.'),
  message('Take the load off evenly over the whole plate: a plate relieved on one side only can crack.'),
  message(
    'Stop when the plate creaks, a bolt moves or a crack opens, and have it looked at before going on.',
  ),
  message("The maker's instructions, local codes and a licensed or specialist trade come before this plan."),
];

/**
 * A plan for letting the strings of a piano down in several passes spread over the plate.
 *
 * Every pass takes the same share of the first load off each string, so that the plate is relieved evenly. Within a
 * pass the sections alternate from the two ends of the compass towards its middle; the next pass begins at the other
 * end. Common practice, no source.
 *
 * The turn of the pin follows from Hooke's law: letting ΔT off a wire shortens it by the length that leaves the pin,
 *
 *     ΔT · L / (E · A) = φ · d_pin/2,     A = π·d²/4
 *
 * @param sections     bass to treble, each with at least one string
 * @param options.passes          how many passes, 2 to 12
 * @param options.youngsModulus   E of the steel [Pa]
 * @returns one pass after another; after the last the load is zero
 *
 * Holds for: steel within its elastic range and wire that slides freely over its bearings. Friction there makes the
 * real turn somewhat larger; the coils on the pin must then still come off. Two digits deserve to be printed.
 * Throws: RangeError when there is no section, or a tension, length, diameter or modulus is not > 0.
 * Source: Hooke's law, any handbook of mechanics.
 */
export function letDownPlan(
  sections: readonly LetDownSection[],
  { passes, youngsModulus }: { readonly passes: number; readonly youngsModulus: Pascals },
): LetDownPass[] {
  const task = 'a let-down plan';
  requirePositive(sections.length, 'the number of sections', task);
  requireWithin(passes, 2, 12, 'the number of passes', task);
  requirePositive(youngsModulus, 'the modulus', task);
  const share = 1 / Math.round(passes);
  const loads = new Map(sections.map(({ section, strings }) => [section, loadOf(strings)]));
  const firstLoads = new Map(loads);

  return Array.from({ length: Math.round(passes) }, (_, index) => {
    const order = fromTheEnds(index % 2 === 0 ? sections : [...sections].reverse());
    const steps = order.map(({ section, strings }): LetDownStep => {
      const first = firstLoads.get(section) ?? 0;
      const isLast = index + 1 === Math.round(passes);
      loads.set(section, isLast ? 0 : first * (1 - share * (index + 1)));
      const turns = strings.map((string) => pinTurn(string, share, youngsModulus)).sort((a, b) => a - b);
      return {
        section,
        turn: {
          least: radians(turns[0]!),
          middle: radians(turns[Math.floor((turns.length - 1) / 2)]!),
          most: radians(turns.at(-1)!),
        },
        load: newtons(loads.get(section) ?? 0),
        totalLoad: newtons([...loads.values()].reduce((sum, load) => sum + load, 0)),
      };
    });
    return { pass: index + 1, steps };
  });
}

/** φ = (share · T) · L / (E · A) / (d_pin / 2). */
function pinTurn(
  { tension, wireLength, steelDiameter, pinDiameter }: LetDownString,
  share: number,
  youngsModulus: number,
): number {
  const crossSection = (Math.PI / 4) * steelDiameter ** 2;
  const shortening = (share * tension * wireLength) / (youngsModulus * crossSection);
  return shortening / (pinDiameter / 2);
}

function loadOf(strings: readonly LetDownString[]): number {
  const task = 'a let-down plan';
  requirePositive(strings.length, 'the number of strings of a section', task);
  let sum = 0;
  for (const { tension, wireLength, steelDiameter, pinDiameter } of strings) {
    requirePositive(wireLength, 'the wire length', task);
    requirePositive(steelDiameter, 'the steel diameter', task);
    requirePositive(pinDiameter, 'the pin diameter', task);
    sum += requirePositive(tension, 'the tension', task);
  }
  return sum;
}

/** First, last, second, second last, … */
function fromTheEnds<T>(items: readonly T[]): T[] {
  const order: T[] = [];
  for (let low = 0, high = items.length - 1; low <= high; low += 1, high -= 1) {
    order.push(items[low]!);
    if (high !== low) order.push(items[high]!);
  }
  return order;
}
