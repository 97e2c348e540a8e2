import { COMMON_SHOP_POLICY, withLimit } from '../../scale/index.ts';
import { A228_MINIMUM, latticeDiameters, METRIC_WIRE_SIZES, US_WIRE_SIZES } from '../../tables/index.ts';
import { rescaleNotes } from '../rescale-notes.ts';
import {
  COMMON_RESCALE_RULES,
  COMMON_RESCALE_WEIGHTS,
  COMMON_WINDING_WIRES,
  type WholeScaleProblem,
} from '../whole-scale-problem.ts';
import { examplePianos } from './example-pianos.ts';

/** The shop of the examples lets strings go to 0.7 of the specification minimum: their top notes lie above 0.65. */
const { limits } = withLimit(COMMON_SHOP_POLICY, 'highestBreakShare', 0.7, 'the shop of the examples');

/** An example piano to be strung anew: some 15 % of tension to either side, all sizes of its own lattice. */
export function exampleProblem(name: 'grand' | 'vertical'): WholeScaleProblem {
  const { notes } = examplePianos.find((piano) => piano.name === name)!;
  const sizes = latticeDiameters(name === 'grand' ? US_WIRE_SIZES : METRIC_WIRE_SIZES);
  return {
    notes: rescaleNotes(notes, {
      limits: { ...limits, lowestBreakSharePlain: { ...limits.lowestBreakSharePlain, value: 0.3 } },
      tensionDown: 0.13,
      tensionUp: 0.15,
      breakMayMove: 3,
    }),
    catalogue: { plain: sizes, cores: sizes, windings: COMMON_WINDING_WIRES },
    strengthTable: A228_MINIMUM,
    weights: COMMON_RESCALE_WEIGHTS,
    rules: COMMON_RESCALE_RULES,
  };
}
