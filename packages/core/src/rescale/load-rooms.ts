/** A highest sum of loads over some of the notes. A note adds the same to every limit that it is under. */
export interface SearchLoad {
  readonly highest: number;
  /** [note][candidate] what it adds; undefined for notes that the limit is not about. */
  readonly adds: readonly (Float64Array | undefined)[];
}

/** Limits that are about the same notes of those up to one: what is left below the lowest of them is left below all. */
interface Room {
  readonly limits: readonly number[];
  /** [note] whether the limits are about it, up to the note of the room. */
  readonly notes: readonly boolean[];
  /** Whether a later note has taken from it: else it is the same for every partial schedule. */
  readonly isTold: boolean;
  /** Rooms that lie within this one, side by side, and the most that the notes beside them can add. */
  readonly within: readonly number[];
  readonly mostBeside: number;
  /** Place of these limits among the rooms of the note before; −1 when that has none of their notes. */
  readonly before: number;
}

/**
 * What the notes up to one may still add to each limit: all of the loads of the notes after it that matters.
 *
 * Three things make it less than a load for every limit. What only settled limits are about is over. Limits that are about the
 * same of the notes that are left share one room, the smallest: in the bass the limit of the bass, of its bridge and of all
 * strings are one. And no room is larger than what can be used of it, which is the rooms within it and the heaviest strings
 * beside them: a total that its sections cannot reach tells nobody apart.
 */
export class LoadRooms {
  /** [note], the narrowest rooms first. */
  private readonly rooms: readonly (readonly Room[])[];
  private readonly adds: readonly (Float64Array | undefined)[];

  constructor(
    private readonly loads: readonly SearchLoad[],
    notes: number,
  ) {
    this.adds = Array.from({ length: notes }, (_, note) =>
      loads.map(({ adds }) => adds[note]).find((column) => column !== undefined),
    );
    const heaviest = this.adds.map((column) => column?.reduce((most, add) => Math.max(most, add), 0) ?? 0);
    const rooms: Room[][] = [];
    for (let note = 0; note < notes; note += 1)
      rooms.push(roomsAt(note, loads, heaviest, rooms[note - 1] ?? []));
    this.rooms = rooms;
  }

  /** Before any note has taken from the limits. */
  full(): Float64Array {
    const last = this.rooms.length - 1;
    return this.asFarAsUsable(
      last,
      Float64Array.from(this.rooms[last]!, ({ limits }) =>
        Math.min(...limits.map((limit) => this.loads[limit]!.highest)),
      ),
    );
  }

  /** What is left for the notes before one when this candidate stands there; undefined when there is no room for it. */
  before(note: number, room: Float64Array, candidate: number): Float64Array | undefined {
    const left = new Float64Array(this.rooms[note - 1]?.length ?? 0).fill(Number.POSITIVE_INFINITY);
    const here = this.rooms[note]!;
    for (let which = 0; which < here.length; which += 1) {
      const { notes, before } = here[which]!;
      const rest = notes[note] ? room[which]! - this.adds[note]![candidate]! : room[which]!;
      if (rest < -ROUNDING) return undefined;
      if (before >= 0 && rest < left[before]!) left[before] = rest;
    }
    return note === 0 ? left : this.asFarAsUsable(note - 1, left);
  }

  /** Rooms in which partial schedules that have come to a note may differ. */
  toldApart(note: number): number[] {
    return this.rooms[note]!.flatMap(({ isTold }, which) => (isTold ? [which] : []));
  }

  /** [note][room] price of what it leaves, from that of each limit. */
  pricesOf(prices: readonly number[]): Float64Array[] {
    return this.rooms.map((here) =>
      Float64Array.from(here, ({ limits }) => limits.reduce((sum, limit) => sum + prices[limit]!, 0)),
    );
  }

  private asFarAsUsable(note: number, room: Float64Array): Float64Array {
    const here = this.rooms[note]!;
    for (let which = 0; which < here.length; which += 1) {
      const { within, mostBeside } = here[which]!;
      let most = mostBeside;
      for (const inner of within) most += room[inner]!;
      if (room[which]! > most) room[which] = most;
    }
    return room;
  }
}

/** [N] More than sums of a whole piano differ by when they are added up in another order, and no load that anybody asks about. */
const ROUNDING = 1e-7;

function roomsAt(
  note: number,
  loads: readonly SearchLoad[],
  heaviest: readonly number[],
  before: readonly Room[],
): Room[] {
  const found: { limits: number[]; notes: boolean[]; count: number }[] = [];
  loads.forEach(({ adds }, limit) => {
    const notes = adds.slice(0, note + 1).map((column) => column !== undefined);
    const count = notes.filter(Boolean).length;
    if (count === 0) return;
    const alike = found.find((one) => one.notes.every((isIn, at) => isIn === notes[at]));
    if (alike === undefined) found.push({ limits: [limit], notes, count });
    else alike.limits.push(limit);
  });
  found.sort((a, b) => a.count - b.count);
  return found.map(({ limits, notes }, which): Room => {
    const beside = [...notes];
    const within: number[] = [];
    for (let inner = which - 1; inner >= 0; inner -= 1) {
      if (!found[inner]!.notes.every((isIn, at) => !isIn || beside[at])) continue;
      within.push(inner);
      found[inner]!.notes.forEach((isIn, at) => {
        if (isIn) beside[at] = false;
      });
    }
    return {
      limits,
      notes,
      isTold: limits.some((limit) =>
        loads[limit]!.adds.slice(note + 1).some((column) => column !== undefined),
      ),
      within,
      mostBeside: beside.reduce((sum, isIn, at) => sum + (isIn ? heaviest[at]! : 0), 0),
      before: before.findIndex((room) => room.limits.includes(limits[0]!)),
    };
  });
}
