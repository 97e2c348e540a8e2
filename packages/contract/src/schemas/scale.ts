import type { ScaleAsFound } from '@becket/tasks';
import { z } from 'zod';

const loadShareSchema = z
  .object({
    name: z.string(),
    firstKey: z.int().optional(),
    lastKey: z.int().optional(),
    notes: z.int(),
    strings: z.int(),
    load_n: z.number(),
    loadStandardUncertainty_n: z.number().optional(),
  })
  .meta({ id: 'LoadShare' });

const analysedNoteSchema = z
  .object({
    key: z.int(),
    section: z.string(),
    bridge: z.string(),
    strings: z.int(),
    kind: z.enum(['plain', 'wound']),
    frequency_hz: z.number(),
    speakingLength_m: z.number(),
    tension_n: z.number().describe('Of one string.'),
    unisonTension_n: z.number().describe('Of all strings of the note together.'),
    stress_pa: z.number().describe('In the wire that carries the tension: the core of a wound string.'),
    breakLoad_n: z.number(),
    breakShare: z.number().describe('Tension as a share of the break load.'),
    strengthTable: z.string().describe('The table that the break load rests on.'),
    strengthRemark: z.string(),
    inharmonicity: z.number(),
    inharmonicityMethod: z.string(),
    impedance_ns_per_m: z.number(),
    standardUncertainties: z
      .record(z.string(), z.number())
      .optional()
      .describe('Standard uncertainty of each figure, in its SI unit.'),
  })
  .meta({ id: 'AnalysedNote' });

export const scaleSchema = z
  .object({
    notes: z.array(analysedNoteSchema).describe('Notes whose readings suffice, in the order of the keys.'),
    notComputed: z
      .array(
        z.object({
          key: z.int(),
          note: z.string(),
          missing: z.array(z.string()),
          contradiction: z.string().optional(),
        }),
      )
      .describe('Notes that cannot be computed yet, each with the readings it lacks.'),
    sections: z.array(loadShareSchema),
    bridges: z.array(loadShareSchema),
    total_n: z.number().describe('Sum of all string tensions computed.'),
    totalStandardUncertainty_n: z.number().optional(),
    totalStrings: z.int(),
  })
  .meta({ id: 'ScaleAsFound' });

type ScaleJson = z.infer<typeof scaleSchema>;
type LoadShare = ScaleAsFound['analysis']['sections'][number];

/** A scale as JSON has it: SI, with the unit in each name. */
export function scaleAsJson({ analysis, notComputed }: ScaleAsFound): ScaleJson {
  return {
    notes: analysis.notes.map((analysed) => ({
      key: analysed.key,
      section: analysed.note.section,
      bridge: analysed.note.bridge,
      strings: analysed.note.strings,
      kind: analysed.note.string.kind,
      frequency_hz: analysed.note.frequency,
      speakingLength_m: analysed.note.string.speakingLength,
      tension_n: analysed.tension,
      unisonTension_n: analysed.unisonTension,
      stress_pa: analysed.stress,
      breakLoad_n: analysed.breakLoad,
      breakShare: analysed.breakShare,
      strengthTable: analysed.strengthTable,
      strengthRemark: analysed.strengthRemark,
      inharmonicity: analysed.inharmonicity,
      inharmonicityMethod: analysed.inharmonicityMethod,
      impedance_ns_per_m: analysed.impedance,
      ...(analysed.standardUncertainties && { standardUncertainties: { ...analysed.standardUncertainties } }),
    })),
    notComputed: notComputed.map(({ key, note, missing, contradiction }) => ({
      key,
      note,
      missing: [...missing],
      ...(contradiction === undefined ? {} : { contradiction }),
    })),
    sections: analysis.sections.map(loadShareAsJson),
    bridges: analysis.bridges.map(loadShareAsJson),
    total_n: analysis.total,
    ...(analysis.totalUncertainty === undefined
      ? {}
      : { totalStandardUncertainty_n: analysis.totalUncertainty }),
    totalStrings: analysis.totalStrings,
  };
}

function loadShareAsJson({ name, firstKey, lastKey, notes, strings, load, loadUncertainty }: LoadShare) {
  return {
    name,
    ...(firstKey === undefined ? {} : { firstKey }),
    ...(lastKey === undefined ? {} : { lastKey }),
    notes,
    strings,
    load_n: load,
    ...(loadUncertainty === undefined ? {} : { loadStandardUncertainty_n: loadUncertainty }),
  };
}
