/**
 * The states of one note that any schedule reaches, in the order in which they were found. Of all that there could be few are
 * cheap enough to be reached, so they are listed, not laid out in a table.
 */
export class ReachedStates {
  length = 0;
  /** Candidate of this note, and of the note before. */
  candidate: Int32Array;
  before: Int32Array;
  /** How long the run is and whether its strings are odd, as the search counts it. */
  state: Uint8Array;
  cost: Float64Array;
  /** Place among the states of the note before that this one comes from. */
  from: Int32Array;
  /** @param expected  how many states there may be: room to begin with, more is made when it is needed */
  constructor(expected: number) {
    const room = Math.max(LEAST_ROOM, expected);
    this.candidate = new Int32Array(room);
    this.before = new Int32Array(room);
    this.state = new Uint8Array(room);
    this.cost = new Float64Array(room);
    this.from = new Int32Array(room);
  }

  add(candidate: number, before: number, state: number, cost: number, from: number): void {
    if (this.length === this.cost.length) this.makeRoom();
    const at = this.length;
    this.candidate[at] = candidate;
    this.before[at] = before;
    this.state[at] = state;
    this.cost[at] = cost;
    this.from[at] = from;
    this.length = at + 1;
  }

  /** Places sorted by candidate: those of candidate c are order[starts[c]] to order[starts[c + 1] − 1]. */
  byCandidate(count: number): { starts: Int32Array; order: Int32Array; largest: number } {
    const starts = new Int32Array(count + 2);
    for (let at = 0; at < this.length; at += 1) starts[this.candidate[at]! + 2]! += 1;
    let largest = 0;
    for (let candidate = 2; candidate < starts.length; candidate += 1) {
      largest = Math.max(largest, starts[candidate]!);
      starts[candidate]! += starts[candidate - 1]!;
    }
    // One place further on while they are filled in: each start ends up where its candidate begins.
    const order = new Int32Array(this.length);
    for (let at = 0; at < this.length; at += 1) {
      const candidate = this.candidate[at]! + 1;
      order[starts[candidate]!] = at;
      starts[candidate]! += 1;
    }
    return { starts, order, largest };
  }

  /** Costs of all states there could be, Infinity where none is reached: [(candidate · countBefore + before) · states + state]. */
  everyCost(count: number, countBefore: number, states: number): Float64Array {
    const costs = new Float64Array(count * countBefore * states).fill(Number.POSITIVE_INFINITY);
    for (let at = 0; at < this.length; at += 1)
      costs[(this.candidate[at]! * countBefore + this.before[at]!) * states + this.state[at]!] =
        this.cost[at]!;
    return costs;
  }

  private makeRoom(): void {
    const room = 2 * this.length;
    const grown = <A extends Int32Array | Uint8Array | Float64Array>(old: A, fresh: A): A => {
      fresh.set(old);
      return fresh;
    };
    this.candidate = grown(this.candidate, new Int32Array(room));
    this.before = grown(this.before, new Int32Array(room));
    this.state = grown(this.state, new Uint8Array(room));
    this.cost = grown(this.cost, new Float64Array(room));
    this.from = grown(this.from, new Int32Array(room));
  }
}

const LEAST_ROOM = 64;
