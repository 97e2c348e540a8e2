/**
 * The sentence a technician reads when something failed: what failed, what is needed, what was found, what to do.
 *
 * Errors of the project carry that sentence already. Anything else is a fault of the program, and is said to be one.
 */
export function sentenceOf(error: unknown): string {
  if (error instanceof Error && /^(Cannot|Could not) /.test(error.message)) return error.message;
  const detail = error instanceof Error ? error.message : String(error);
  return `Something went wrong inside Becket, and nothing was changed: ${detail}. Load the page again; if it happens again, save the job as a file and report it.`;
}
