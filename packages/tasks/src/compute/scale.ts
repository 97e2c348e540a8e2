import {
  analyseScale,
  hertz,
  kilogramsPerCubicMetre,
  metres,
  type NoteAnalysis,
  pascals,
  type ScaleNote,
} from '@becket/core';
import * as z from 'zod';
import { computeKind, figure, notNegative, positive } from './compute-kind.ts';
import { steelParameters, strengthParameters, strengthTableOf } from './wire-parameters.ts';

const noteRequest = z.object({
  key: z.int().min(1).max(128).describe('key number, 1 = A0; each at most once'),
  section: z.string().describe("name of its run of notes between two struts; default ''").optional(),
  bridge: z.string().describe("name of its bridge; default ''").optional(),
  strings: z.union([z.literal(1), z.literal(2), z.literal(3)]).describe('strings of the unison, 1, 2 or 3'),
  f0_Hz: positive('first mode of the flexible string'),
  speaking_length_m: positive('front termination to bridge pin'),
  diameter_m: positive('diameter of the wire, or of the core'),
  layers: z
    .array(
      z.object({
        wire_diameter_m: positive('diameter of the winding wire'),
        start_m: notNegative('bare length at the front'),
        end_m: notNegative('bare length at the back'),
      }),
    )
    .max(4)
    .describe('windings, inner first; none or left out: a plain string')
    .optional(),
});

const load = z.object({
  name: z.string().describe('as given with the notes'),
  strings: figure('how many'),
  load_N: figure('their tensions added up'),
});

export const scale = computeKind({
  kind: 'scale',
  summary: 'A whole piano: every note, and the load by section, by bridge and in all.',
  notes: [
    'Plain strings by the equations of `plain`. Wound strings by their exact modes, pinned, B fitted over partials 1 to 8; or, with wound_strings "core formula", quickly and roughly: tension a little low, and B without the bare ends, which multiply it by 1.04 to 4.5.',
    'percent_break is of the wire, or of the core, by the named strength table; real piano wire usually tests stronger than the ASTM A228 minimum.',
  ],
  request: z.object({
    kind: z.literal('scale'),
    notes: z.array(noteRequest).min(1).max(128).describe('the notes, in any order'),
    wound_strings: z
      .enum(['exact modes', 'core formula'])
      .describe('how wound strings are worked out; default exact modes')
      .optional(),
    ...steelParameters,
    ...strengthParameters,
  }),
  answer: z.object({
    total_N: figure('all string tensions added up'),
    total_strings: figure('how many strings'),
    sections: z.array(load).describe('in the order of their lowest key'),
    bridges: z.array(load).describe('in the order of their lowest key'),
    notes: z
      .array(
        z.object({
          key: figure('key number'),
          tension_N: figure('of one string'),
          percent_break: figure('100 · tension / break load'),
          B: figure('inharmonicity'),
          strength_within_table: z
            .boolean()
            .describe('whether the wire lies inside the range of the strength table'),
        }),
      )
      .describe('in the order of the keys'),
    strength_table: z.string().describe('name of the strength table'),
  }),
  example: {
    kind: 'scale',
    notes: [
      {
        key: 13,
        section: 'bass',
        bridge: 'bass bridge',
        strings: 2,
        f0_Hz: 55,
        speaking_length_m: 1.2,
        diameter_m: 0.0011,
        layers: [{ wire_diameter_m: 0.00095, start_m: 0.018, end_m: 0.014 }],
      },
      {
        key: 49,
        section: 'treble',
        bridge: 'long bridge',
        strings: 3,
        f0_Hz: 440,
        speaking_length_m: 0.4,
        diameter_m: 0.001,
      },
    ],
  },
  compute: (request) => {
    const { rho_steel_kg_per_m3, E_steel_Pa } = request;
    const material = {
      ...(rho_steel_kg_per_m3 !== undefined && { steelDensity: kilogramsPerCubicMetre(rho_steel_kg_per_m3) }),
      ...(E_steel_Pa !== undefined && { youngsModulus: pascals(E_steel_Pa) }),
    };
    const notes = request.notes.map((note): ScaleNote => {
      const speakingLength = metres(note.speaking_length_m);
      const diameter = metres(note.diameter_m);
      const layers = (note.layers ?? []).map((layer) => ({
        wireDiameter: metres(layer.wire_diameter_m),
        bareFront: metres(layer.start_m),
        bareBack: metres(layer.end_m),
      }));
      return {
        key: note.key,
        section: note.section ?? '',
        bridge: note.bridge ?? '',
        strings: note.strings,
        frequency: hertz(note.f0_Hz),
        string:
          layers.length === 0
            ? { kind: 'plain', speakingLength, diameter, ...material }
            : { kind: 'wound', speakingLength, coreDiameter: diameter, layers, ...material },
      };
    });
    const strengthTable = strengthTableOf(request);
    const analysis = analyseScale(notes, {
      strengthTable,
      uncertainties: 'left out',
      woundStrings: request.wound_strings,
    });
    return {
      total_N: analysis.total,
      total_strings: analysis.totalStrings,
      sections: analysis.sections.map(loadAnswer),
      bridges: analysis.bridges.map(loadAnswer),
      notes: analysis.notes.map(noteAnswer),
      strength_table: strengthTable.name,
    };
  },
});

const loadAnswer = (share: { name: string; strings: number; load: number }) => ({
  name: share.name,
  strings: share.strings,
  load_N: share.load,
});

const noteAnswer = (note: NoteAnalysis) => ({
  key: note.key,
  tension_N: note.tension,
  percent_break: 100 * note.breakShare,
  B: note.inharmonicity,
  strength_within_table: note.isWithinStrengthTable,
});
