/** How much one request may bring. A client splits what is larger. */
export const limits = {
  /** Entries in one batch. */
  entriesInBatch: 5000,
  /** Bytes of a batch of entries. */
  entriesBytes: 10 * 1024 * 1024,
  /** Bytes of any other JSON body. */
  jsonBytes: 256 * 1024,
  /** Bytes of a table of readings that is brought in. */
  tableBytes: 20_000_000,
  /** Bytes of a photo: what a store takes. */
  blobBytes: 8 * 1024 * 1024,
  /** Bytes of a list of digests to look for. */
  digestsBytes: 512 * 1024,
} as const;
