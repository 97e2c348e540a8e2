import { proposedScaleNotes } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { openDemoJob } from '../demo/open-demo-job.ts';
import { inferredWireSizes } from '../infer-wire-sizes.ts';
import { STARTING_ORDER_POLICY } from '../order/order-policy.ts';
import { stringingFigures } from '../order/stringing-figures.ts';
import { loopsAndCuts } from '../scale/loops-and-cuts.ts';
import { tidiedScale } from '../scale/tidied-scale.ts';
import { memoryContext } from '../testing/memory-context.ts';

describe('a wire has one cut length', () => {
  it('the loops of what was found, in whole sizes, are cut as the stringing sheets say, whatever the shop cuts with', async () => {
    const job = await openDemoJob(memoryContext());
    expect(job.chosenScale).toBeUndefined();
    const cut = { ...STARTING_ORDER_POLICY.cut, coils: 3.5, tie_m: 0.08, pinDiameter_m: 0.0071 };
    const sheets = new Map(
      stringingFigures(job, { ...STARTING_ORDER_POLICY, cut }).wires.map(({ strings, ...wire }) => [
        strings.map(({ key, string }) => `${key}/${string}`).join(' + '),
        wire.cut.total,
      ]),
    );
    const inWholeSizes = tidiedScale(job, inferredWireSizes(job));
    const scale = proposedScaleNotes(job, { name: 'as found, in whole sizes', notes: inWholeSizes });
    const wires = loopsAndCuts(job, scale, cut).flatMap((section) => section.wires);
    expect(wires.length).toBeGreaterThan(50);
    for (const { strings, cut: own } of wires) {
      const name = strings.map(({ key, string }) => `${key}/${string}`).join(' + ');
      expect(own.total, name).toBeCloseTo(sheets.get(name) ?? Number.NaN, 9);
    }
  });
});
