/** What the exit status of `becket` means; docs/reference/cli.md lists the same. */
export const exitStatus = {
  done: 0,
  /** The command ran, and the answer is no: the strip check is not passed, something is to be bought, some compute lines had errors. */
  no: 1,
  /** The command line itself was not understood. */
  wrongUse: 2,
  /** A file, cell or value given to the command cannot be used. Nothing was stored. */
  badInput: 3,
  /** There is no such job, paper, file or store. */
  notFound: 4,
  /** The record is sealed, gaps are open, or checks of an order are: the job does not allow this now. */
  notNow: 5,
  /** The store cannot be read or written. */
  store: 6,
  /** A fault of the program. */
  fault: 70,
} as const;
export type ExitStatus = (typeof exitStatus)[keyof typeof exitStatus];
