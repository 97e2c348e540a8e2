import { english, type Language, type ScaleNote, scaleSensitivity, strengthTableNamed } from '@becket/core';
import { forceUnits, inForceUnit } from '../../parts/force-text.ts';
import type { LengthUnit } from '../../parts/length-text.ts';

/** What a slip of the rule or of the micrometer would do to one note, in words. */
export function slipLines(
  note: ScaleNote,
  strengthTable: string,
  unit: LengthUnit = 'mm',
  { fixed, say }: Language = english,
): { change: string; tension: string; share: string; b: string }[] {
  const [sensitivity] = scaleSensitivity([note], {}, { strengthTable: strengthTableNamed(strengthTable) });
  if (sensitivity === undefined) return [];
  const { speakingLength, wireDiameter, windingDiameter } = sensitivity;
  const rows = [
    [say('speaking length ± 0.5 mm'), speakingLength],
    [note.string.kind === 'plain' ? say('wire ± 5 µm') : say('core ± 5 µm'), wireDiameter],
    [say('windings ± 5 µm'), windingDiameter],
  ] as const;
  return rows.flatMap(([change, ways]) => {
    if (ways === undefined) return [];
    const largest = (of: (one: NonNullable<typeof ways>['more']) => number) =>
      Math.max(Math.abs(of(ways.more)), Math.abs(of(ways.less)));
    return [
      {
        change,
        tension: `± ${fixed(
          inForceUnit(
            largest(({ tension }) => tension),
            unit,
          ),
          1,
        )} ${forceUnits[unit]}`,
        share: say('± {points} points', { points: fixed(largest(({ breakShare }) => breakShare) * 100, 1) }),
        b: `± ${fixed(largest(({ inharmonicityShare }) => inharmonicityShare) * 100, 1)} %`,
      },
    ];
  });
}
