import { inferWireSizes, inMetres, metres } from '@becket/core';
import * as z from 'zod';
import { computeKind, figure, positive } from './compute-kind.ts';

/** The thickest over-all diameter of a bass string is some 7 mm: above this the unit is another. Common practice, no source. */
const thickest_m = 0.01;
const wire = (what: string) =>
  positive(what).max(thickest_m, {
    error: ({ input }) =>
      `metres are needed, at most ${thickest_m} for a wire, such as 0.00081: found ${input}`,
  });

export const gaugeInference = computeKind({
  kind: 'gauge_inference',
  summary: 'The most probable sizes of a run of worn plain wire, with the odds of each note.',
  notes: [
    'Sizes never grow towards the treble and come in runs. A reading is its size with a common bias (wear, zero of the micrometer), a scatter, or a slip; bias and scatter are summed out.',
    'choice_index counts in diameters_m as given, from 0; it makes the possible schedule with the most notes expected right. odds is the probability of that diameter at the note, 0 to 1.',
    'A bias of a whole step cannot be told from another size by worn wire alone: shift_probability is the chance that every size lies a step or more away.',
  ],
  request: z.object({
    kind: z.literal('gauge_inference'),
    readings_m: z
      .array(wire('reading of a wire').nullable())
      .min(1)
      .max(1000)
      .describe('one for each note, bass to treble; null where the note has not been read'),
    diameters_m: z
      .array(wire('diameter'))
      .min(1)
      .max(200)
      .describe('the sizes the wire may have been, in any order'),
    minimum_run: z
      .int()
      .min(1)
      .max(100)
      .describe('fewest notes that one size serves in a row, but for the first and last run')
      .default(1),
  }),
  answer: z.object({
    choice_index: z.array(z.int()).describe('index into diameters_m for each note'),
    odds: z.array(figure('probability of the chosen diameter')),
    bias_m: figure('common difference of the readings from new wire; negative is thinner'),
    bias_u_m: figure('its standard uncertainty'),
    scatter_m: figure('standard deviation of one reading about its size and the bias'),
    shift_probability: figure(
      'chance that the bias lies more than half the smallest step from bias_m; 0 under 0.02',
    ),
    notes_expected_wrong: figure('sum of 1 − odds over the notes'),
  }),
  example: {
    kind: 'gauge_inference',
    readings_m: [0.000832, 0.000836, null, 0.00081, 0.000809, 0.000812, 0.000782, 0.000784],
    diameters_m: [0.0007874, 0.0008128, 0.0008382, 0.0008636],
  },
  compute: (request) => {
    const { notes, bias, scatter, shiftDoubt, notesExpectedWrong } = inferWireSizes({
      notes: request.readings_m.map((reading) => (reading === null ? [] : [{ diameter: metres(reading) }])),
      diameters: request.diameters_m.map(metres),
      rules: { minimumRun: request.minimum_run },
    });
    return {
      choice_index: notes.map((note) => note.choice),
      odds: notes.map((note) => note.odds),
      bias_m: inMetres(bias.value),
      bias_u_m: inMetres(bias.standardUncertainty),
      scatter_m: inMetres(scatter.value),
      shift_probability: shiftDoubt?.probability ?? 0,
      notes_expected_wrong: notesExpectedWrong,
    };
  },
});
