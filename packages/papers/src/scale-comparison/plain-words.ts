import { inKilonewtons, newtons, type ScaleAnalysis } from '@becket/core';
import { counted } from '../every-paper/running-lines.ts';
import type { ComparedScales } from './compared-scales.ts';

/** What the change comes to, for whoever owns the piano: no formula, every figure with what it means. */
export function plainWords({ comparison, before, after, unevenness, name }: ComparedScales): string[] {
  const inBoth = comparison.notes.filter((note) => note.before !== undefined && note.after !== undefined);
  const changed = inBoth.filter(({ isChanged }) => isChanged).length;
  const all = comparison.loads.find(({ of }) => of === 'all')!;
  const [was, is] = [all.before!.load, all.after!.load];
  return [
    changed === 0
      ? `No note gets another size of wire than it had: “${name}” is the scale that was found, in new wire.`
      : `${counted(changed, 'note gets', 'notes get')} another size of wire than before, of ${inBoth.length} that can be compared.`,
    ...(unevenness.before === undefined || unevenness.after === undefined
      ? []
      : [
          `From one note to the next the pull of a string bends by ${percent(unevenness.after)} on average; as it was found, by ${percent(unevenness.before)}. The less it bends, the more alike neighbours feel and sound.`,
        ]),
    `All these strings together pull ${kN(is)} instead of ${kN(was)}: the plate and the case bear ${loadWords(is - was)}.`,
    `The string nearest to breaking stands at ${percent(highestShare(after), 0)} of what new wire is sure to bear; as it was found, at ${percent(highestShare(before), 0)}.`,
    ...beatWords(comparison),
  ];
}

function beatWords({ beats }: ComparedScales['comparison']): string[] {
  const thirds = beats.filter(({ interval }) => interval === 'major third');
  /** Between thirds that lie a semitone apart: those of another break are another row. */
  const jump = (when: 'before' | 'after'): number | undefined => {
    const jumps = thirds.slice(1).flatMap((third, index) => {
      const [here, below] = [third[when], thirds[index]!];
      const isNext = third.lowerKey === below.lowerKey + 1;
      return isNext && here !== undefined && below[when] !== undefined ? [Math.abs(here - below[when])] : [];
    });
    return jumps.length === 0 ? undefined : Math.max(...jumps);
  };
  const [was, is] = [jump('before'), jump('after')];
  if (was === undefined || is === undefined) return [];
  return [
    `Where the wound strings meet the plain ones, thirds played upwards beat at speeds that jump by up to ${is.toFixed(1)} beats a second from one to the next; as it was found, by up to ${was.toFixed(1)}.`,
  ];
}

export const percent = (share: number, digits = 1): string => `${(share * 100).toFixed(digits)} %`;
export const kN = (force: number): string => `${inKilonewtons(newtons(force)).toFixed(1)} kN`;

/** A tenth of a kilonewton is the last digit that is printed. */
function loadWords(difference: number): string {
  const size = kN(Math.abs(difference));
  return size === '0.0 kN' ? 'as much as before' : `${size} ${difference > 0 ? 'more' : 'less'} than before`;
}

const highestShare = ({ notes }: ScaleAnalysis): number =>
  Math.max(...notes.map(({ breakShare }) => breakShare));
