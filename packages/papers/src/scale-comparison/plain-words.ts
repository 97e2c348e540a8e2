import { inKilonewtons, type Language, newtons, type ScaleAnalysis } from '@becket/core';
import type { ComparedScales } from './compared-scales.ts';

/** What the change comes to, for whoever owns the piano: no formula, every figure with what it means. */
export function plainWords(
  { comparison, before, after, unevenness, name }: ComparedScales,
  language: Language,
): string[] {
  const { say, plain } = language;
  const inBoth = comparison.notes.filter((note) => note.before !== undefined && note.after !== undefined);
  const changed = inBoth.filter(({ isChanged }) => isChanged).length;
  const all = comparison.loads.find(({ of }) => of === 'all')!;
  const [was, is] = [all.before!.load, all.after!.load];
  return [
    changed === 0
      ? say(
          'No note gets another size of wire than it had: “{name}” is the scale that was found, in new wire.',
          { name },
        )
      : say(
          '{count, plural, one {# note gets} other {# notes get}} another size of wire than before, of {all} that can be compared.',
          { count: changed, all: plain(inBoth.length) },
        ),
    ...(unevenness.before === undefined || unevenness.after === undefined
      ? []
      : [
          say(
            'From one note to the next the pull of a string bends by {after} on average; as it was found, by {before}. The less it bends, the more alike neighbours feel and sound.',
            { after: percent(unevenness.after, language), before: percent(unevenness.before, language) },
          ),
        ]),
    loadWords(was, is, language),
    say(
      'The string nearest to breaking stands at {after} of what new wire is sure to bear; as it was found, at {before}.',
      {
        after: percent(highestShare(after), language, 0),
        before: percent(highestShare(before), language, 0),
      },
    ),
    ...beatWords(comparison, language),
  ];
}

function beatWords({ beats }: ComparedScales['comparison'], { say, fixed }: Language): string[] {
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
    say(
      'Where the wound strings meet the plain ones, thirds played upwards beat at speeds that jump by up to {after} beats a second from one to the next; as it was found, by up to {before}.',
      { after: fixed(is, 1), before: fixed(was, 1) },
    ),
  ];
}

const percent = (share: number, { fixed }: Language, digits = 1): string => `${fixed(share * 100, digits)} %`;
export const kN = (force: number, { fixed }: Language): string =>
  `${fixed(inKilonewtons(newtons(force)), 1)} kN`;

/** A tenth of a kilonewton is the last digit that is printed. */
function loadWords(was: number, is: number, language: Language): string {
  const { say } = language;
  const size = kN(Math.abs(is - was), language);
  const values = { is: kN(is, language), was: kN(was, language) };
  if (size === kN(0, language))
    return say(
      'All these strings together pull {is} instead of {was}: the plate and the case bear as much as before.',
      values,
    );
  return is > was
    ? say(
        'All these strings together pull {is} instead of {was}: the plate and the case bear {size} more than before.',
        { ...values, size },
      )
    : say(
        'All these strings together pull {is} instead of {was}: the plate and the case bear {size} less than before.',
        { ...values, size },
      );
}

const highestShare = ({ notes }: ScaleAnalysis): number =>
  Math.max(...notes.map(({ breakShare }) => breakShare));
