import { noteName } from '@becket/core';
import type { Job } from '@becket/journal';
import type { LoopStyle, Twist } from './parts-state.ts';

/** Neighbouring wound notes of which the same is said, or one string of which something of its own is. */
export interface WindingRun {
  readonly firstKey: number;
  readonly lastKey: number;
  /** Undefined where it speaks for every string of its notes. */
  readonly string: number | undefined;
  /** Undefined while nothing is said. */
  readonly said: { readonly loopStyle: LoopStyle; readonly twist: Twist } | undefined;
}

/** What is said of the windings of a section, bass to treble; a string alone after its note. */
export function windingRuns(job: Job, section: string): WindingRun[] {
  const range = job.sections.find((one) => one.section === section);
  const keys = [...job.unisons.values()]
    .filter(
      ({ key, winding }) =>
        winding === 'wound' && range !== undefined && range.firstKey <= key && key <= range.lastKey,
    )
    .map(({ key }) => key)
    .sort((a, b) => a - b);
  const runs: WindingRun[] = [];
  for (const key of keys) {
    const own = job.windings.filter((one) => one.key === key);
    const ofNote = own.find(({ string }) => string === undefined);
    const ofStrings = own.filter(({ string }) => string !== undefined).sort((a, b) => a.string! - b.string!);
    const before = runs.at(-1);
    const goesOn =
      before?.string === undefined &&
      before?.lastKey === key - 1 &&
      before.said?.loopStyle === ofNote?.loopStyle &&
      before.said?.twist === ofNote?.twist;
    if (goesOn) runs[runs.length - 1] = { ...before, lastKey: key };
    else runs.push({ firstKey: key, lastKey: key, string: undefined, said: ofNote });
    for (const one of ofStrings) runs.push({ firstKey: key, lastKey: key, string: one.string, said: one });
  }
  return runs;
}

export interface WindingForm {
  readonly from: string;
  readonly to: string;
  readonly string: 'every string' | '1' | '2' | '3';
  readonly loopStyle: LoopStyle;
  readonly twist: Twist;
}

/** The form of a run as it stands. Without one: the first of which nothing is said, made as the last that was. */
export function windingForm(runs: readonly WindingRun[], run?: WindingRun): WindingForm {
  const shown = run ?? runs.find(({ said }) => said === undefined) ?? runs[0];
  const said = shown?.said ?? runs.findLast((one) => one.said !== undefined)?.said;
  return {
    from: shown === undefined ? '' : noteName(shown.firstKey),
    to: shown === undefined ? '' : noteName(shown.lastKey),
    string: shown?.string === undefined ? 'every string' : (String(shown.string) as '1' | '2' | '3'),
    // How most are made: a proposal that is in sight, and kept only when somebody says so. Common practice, no source.
    loopStyle: said?.loopStyle ?? 'single loop',
    twist: said?.twist ?? 'right',
  };
}
