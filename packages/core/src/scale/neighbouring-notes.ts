import type { NoteAnalysis } from './note-analysis.ts';

/** Notes with the next key up, in the order of the keys. */
export function neighbours(notes: readonly NoteAnalysis[]): [NoteAnalysis, NoteAnalysis][] {
  return notes.flatMap((upper, index): [NoteAnalysis, NoteAnalysis][] => {
    const lower = notes[index - 1];
    return lower !== undefined && upper.key === lower.key + 1 ? [[lower, upper]] : [];
  });
}

/** Runs of neighbouring notes that all meet a condition. */
export function runsOf(
  notes: readonly NoteAnalysis[],
  meets: (note: NoteAnalysis) => boolean,
): NoteAnalysis[][] {
  const runs: NoteAnalysis[][] = [];
  for (const note of notes.filter(meets)) {
    const run = runs[runs.length - 1];
    if (run !== undefined && run[run.length - 1]!.key === note.key - 1) run.push(note);
    else runs.push([note]);
  }
  return runs;
}

export function mostBy(notes: readonly NoteAnalysis[], figure: (note: NoteAnalysis) => number): NoteAnalysis {
  return notes.reduce((most, note) => (figure(note) > figure(most) ? note : most));
}
