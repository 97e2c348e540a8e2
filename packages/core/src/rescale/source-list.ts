/** States that a pair can come from, cheapest first once sorted. Kept from pair to pair so that nothing is allocated. */
export class SourceList {
  length = 0;
  sources: Int32Array;
  candidates: Int32Array;
  sums: Float64Array;
  private readonly unsortedSources: Int32Array;
  private readonly unsortedCandidates: Int32Array;
  private readonly unsortedSums: Float64Array;
  private readonly order: Int32Array;
  constructor(readonly capacity: number) {
    this.sources = new Int32Array(capacity);
    this.candidates = new Int32Array(capacity);
    this.sums = new Float64Array(capacity);
    this.unsortedSources = new Int32Array(capacity);
    this.unsortedCandidates = new Int32Array(capacity);
    this.unsortedSums = new Float64Array(capacity);
    this.order = new Int32Array(capacity);
  }

  clear(): void {
    this.length = 0;
  }

  add(source: number, candidate: number, sum: number): void {
    this.unsortedSources[this.length] = source;
    this.unsortedCandidates[this.length] = candidate;
    this.unsortedSums[this.length] = sum;
    this.length += 1;
  }

  sort(): void {
    const { length, order } = this;
    if (length === 0) return;
    for (let index = 0; index < length; index += 1) order[index] = index;
    sortByKey(order, this.unsortedSums, 0, length - 1);
    for (let index = 0; index < length; index += 1) {
      const at = order[index]!;
      this.sources[index] = this.unsortedSources[at]!;
      this.candidates[index] = this.unsortedCandidates[at]!;
      this.sums[index] = this.unsortedSums[at]!;
    }
  }
}

/** Quicksort of indices by their keys, without a call for each comparison. */
function sortByKey(order: Int32Array, keys: Float64Array, from: number, to: number): void {
  let [low, high] = [from, to];
  while (high - low > 12) {
    const pivot = keys[order[(low + high) >> 1]!]!;
    let [left, right] = [low, high];
    while (left <= right) {
      while (keys[order[left]!]! < pivot) left += 1;
      while (keys[order[right]!]! > pivot) right -= 1;
      if (left > right) break;
      const swapped = order[left]!;
      order[left] = order[right]!;
      order[right] = swapped;
      left += 1;
      right -= 1;
    }
    // The shorter part by a call, the longer one here: the depth stays below the logarithm of the length.
    if (right - low < high - left) {
      sortByKey(order, keys, low, right);
      low = left;
    } else {
      sortByKey(order, keys, left, high);
      high = right;
    }
  }
  for (let index = low + 1; index <= high; index += 1) {
    const moved = order[index]!;
    const key = keys[moved]!;
    let at = index - 1;
    while (at >= low && keys[order[at]!]! > key) {
      order[at + 1] = order[at]!;
      at -= 1;
    }
    order[at + 1] = moved;
  }
}
