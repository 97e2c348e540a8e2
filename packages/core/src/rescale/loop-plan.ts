import { type Metres, metres, requirePositive } from '../units/index.ts';

/** One string of a section, in order from bass to treble. */
export interface PlanString {
  readonly key: number;
  /** 1, 2 or 3, counted from the bass side. */
  readonly string: number;
  /** Which size it gets: any label; equal labels are one wire size. */
  readonly size: number;
}

/** One wire of the plan. */
export interface PlannedWire {
  /** Two strings for a looped wire, one for a tied one; indices into the section's strings. */
  readonly strings: readonly [number] | readonly [number, number];
  readonly joined: 'looped' | 'tied';
}

export interface LoopPlan {
  readonly wires: readonly PlannedWire[];
  readonly tied: number;
  /** Indices of strings at whose lower side the size changes inside what would otherwise be a loop. */
  readonly changesInsideLoops: readonly number[];
}

/**
 * Which strings of one section share a wire, with the fewest tied strings.
 *
 * A looped wire serves two neighbouring strings of one size, so every run of one size with an odd count leaves exactly one
 * string over: the fewest tied strings of a section is the number of its odd runs. The tied string is put at the treble
 * end of its run, where wire is shortest. A change falls *inside a loop* when the run below it is odd while the strings
 * counted from the section's beginning are odd as well: looping on would have to join two sizes.
 *
 * @param strings  the plain strings of one section, bass to treble; may be empty
 * @returns the wires in order
 *
 * Source: counting; that loops straddle notes and stay within a section is common practice, no source.
 * @example  loopPlan([{ key: 50, string: 1, size: 17 }, { key: 50, string: 2, size: 17 }, { key: 50, string: 3, size: 17 }]).tied  // = 1
 */
export function loopPlan(strings: readonly PlanString[]): LoopPlan {
  const wires: PlannedWire[] = [];
  const changesInsideLoops: number[] = [];
  let start = 0;
  while (start < strings.length) {
    let end = start + 1;
    while (end < strings.length && strings[end]!.size === strings[start]!.size) end += 1;
    for (let index = start; index + 1 < end; index += 2)
      wires.push({ strings: [index, index + 1], joined: 'looped' });
    if ((end - start) % 2 === 1) {
      wires.push({ strings: [end - 1], joined: 'tied' });
      if (end < strings.length) changesInsideLoops.push(end);
    }
    start = end;
  }
  return { wires, tied: wires.filter(({ joined }) => joined === 'tied').length, changesInsideLoops };
}

/** A size change moved by whole notes, and what that does to the tied strings. */
export interface ChangeShift {
  /** Key of the first note of the thinner size, before and after. */
  readonly fromKey: number;
  readonly toKey: number;
  readonly tiedBefore: number;
  readonly tiedAfter: number;
}

/**
 * Size changes that save tied strings when moved by one note, one at a time, the best first.
 *
 * Moving a change by a note of three strings (or of one) turns the parity of the runs on both sides of it; by a note of
 * two it turns none. No run is emptied, and a change never leaves its section.
 *
 * @param strings  the plain strings of one section, bass to treble
 * @example  shiftsThatSaveTies([{ key: 50, string: 1, size: 17 }, { key: 51, string: 1, size: 17 }, { key: 52, string: 1, size: 17 }, { key: 53, string: 1, size: 16 }])[0].toKey  // = 52
 */
export function shiftsThatSaveTies(strings: readonly PlanString[]): ChangeShift[] {
  const before = loopPlan(strings).tied;
  const keys = [...new Set(strings.map(({ key }) => key))];
  const sizeOf = new Map(strings.map(({ key, size }) => [key, size]));
  const shifts: ChangeShift[] = [];
  for (let index = 1; index < keys.length; index += 1) {
    const [low, high] = [keys[index - 1]!, keys[index]!];
    if (sizeOf.get(low) === sizeOf.get(high)) continue;
    const moves = [
      { key: high, size: sizeOf.get(low)!, toKey: keys[index + 1] },
      { key: low, size: sizeOf.get(high)!, toKey: low },
    ];
    for (const { key, size, toKey } of moves) {
      const isLastOfItsSize = keys.filter((other) => sizeOf.get(other) === sizeOf.get(key)).length === 1;
      if (toKey === undefined || isLastOfItsSize) continue;
      const moved = strings.map((string) => (string.key === key ? { ...string, size } : string));
      const tiedAfter = loopPlan(moved).tied;
      if (tiedAfter < before) shifts.push({ fromKey: high, toKey, tiedBefore: before, tiedAfter });
    }
  }
  return shifts.sort((a, b) => a.tiedAfter - b.tiedAfter || a.fromKey - b.fromKey);
}

/** What a wire's cut length is made of. */
export interface CutLengthParts {
  /** One front, speaking and back length for each string it makes. */
  readonly strings: readonly { readonly front: Metres; readonly speaking: Metres; readonly back: Metres }[];
  readonly pinDiameter: Metres;
  readonly wireDiameter: Metres;
  readonly hitchPinDiameter: Metres;
  /** Turns on each pin. Common practice: 3. */
  readonly coils: number;
  /** What goes through the eye of each pin: the becket. */
  readonly becket: Metres;
  /** What is cut off at each pin, and for a tied wire what makes its hitch loop. */
  readonly waste: Metres;
  readonly tie: Metres;
}

export interface CutLength {
  readonly total: Metres;
  /** Each part by name, so that a cut list can show its sum. */
  readonly parts: Readonly<
    Record<'front' | 'speaking' | 'back' | 'coils' | 'beckets' | 'hitch' | 'tie' | 'waste', number>
  >;
}

/**
 * The length to cut for one wire.
 *
 *     total = Σ(front + speaking + back) + p · [c·π·(d_pin + d_wire) + becket + waste] + hitch + tie
 *     hitch = π/2 · (d_hitch + d_wire) for a looped wire's half turn; a tied wire has its loop in `tie` instead
 *
 * @param parts.strings  one for a tied wire, two for a looped one; p is their count [m]
 * @returns total and its parts [m]
 *
 * Throws: RangeError when a length or diameter is not > 0 or there are not one or two strings.
 * Source: geometry; three coils and a becket are common practice, no source.
 * @example  cutLength({ strings: [{ front: millimetres(100), speaking: millimetres(500), back: millimetres(120) }], pinDiameter: millimetres(7), wireDiameter: millimetres(1), hitchPinDiameter: millimetres(4), coils: 3, becket: millimetres(6), waste: millimetres(30), tie: millimetres(80) }).total  // ≈ 0.9114 m
 */
export function cutLength({
  strings,
  pinDiameter,
  wireDiameter,
  hitchPinDiameter,
  coils,
  becket,
  waste,
  tie,
}: CutLengthParts): CutLength {
  const task = 'a cut length';
  if (strings.length !== 1 && strings.length !== 2) {
    throw new RangeError(
      `Cannot compute ${task} as a wire makes one or two strings: found ${strings.length}`,
    );
  }
  for (const [name, value] of Object.entries({ pinDiameter, wireDiameter, hitchPinDiameter, coils }))
    requirePositive(value, name, task);
  let [front, speaking, back] = [0, 0, 0];
  for (const string of strings) {
    front += requirePositive(string.front, 'the front length', task);
    speaking += requirePositive(string.speaking, 'the speaking length', task);
    back += requirePositive(string.back, 'the back length', task);
  }
  const pins = strings.length;
  const parts = {
    front: metres(front),
    speaking: metres(speaking),
    back: metres(back),
    coils: metres(pins * coils * Math.PI * (pinDiameter + wireDiameter)),
    beckets: metres(pins * becket),
    hitch: metres(pins === 2 ? (Math.PI / 2) * (hitchPinDiameter + wireDiameter) : 0),
    tie: metres(pins === 1 ? tie : 0),
    waste: metres(pins * waste),
  };
  return { parts, total: metres(Object.values(parts).reduce((sum, part) => sum + part, 0)) };
}
