/*
 * Published strings of a concert grand, taken from `checks/checks.json` (ids chab-wrapped-…), where the source of each
 * figure stands. Only lengths, diameters and tensions were published: what the notes are strung with in number, and the
 * windings of the lowest, were not, and are left out.
 */

import type { ColumnMapping } from '../../packages/tasks/src/import/column-mapping.ts';

interface PublishedCheck {
  readonly id: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: number;
  readonly tolerance: { readonly rel: number };
  readonly source: string;
  readonly note?: string;
}

const PATTERN = /^chab-wrapped-(.+)-f1$/;
const STEEL_KG_M3 = 7850;

export function concertGrand(checks: readonly PublishedCheck[]): {
  rows: string[][];
  job: unknown;
  mapping: ColumnMapping;
  truth: unknown;
} {
  const strings = checks.flatMap((check) => {
    const note = PATTERN.exec(check.id)?.[1];
    return note === undefined ? [] : [{ note, check }];
  });
  // A string whose mass on its core area is not that of steel carries a winding.
  const isWound = ({ inputs }: PublishedCheck): boolean =>
    Math.abs(inputs.equivalent_density_on_core_area_kg_m3! / STEEL_KG_M3 - 1) > 0.05;
  const header = ['Note', 'Plain or wound', 'Speaking length (m)', 'Wire (mm)', 'Core (mm)', 'Tension (N)'];
  const rows = strings.map(({ note, check }) => {
    const { length_m, core_diameter_mm, tension_N } = check.inputs;
    const wound = isWound(check);
    return [
      note,
      wound ? 'wound' : 'plain',
      `${length_m}`,
      wound ? '—' : `${core_diameter_mm}`,
      wound ? `${core_diameter_mm}` : '—',
      `${tension_N}`,
    ];
  });
  return {
    rows: [header, ...rows],
    job: {
      title: 'Published strings of a concert grand (example)',
      piano: { form: 'grand', firstKey: 1, lastKey: 88, referencePitch_hz: 440 },
      source: strings[0]?.check.source,
    },
    mapping: {
      columns: [
        { is: 'note' },
        { is: 'winding' },
        { is: 'reading', quantity: 'speaking-length', unit: 'm' },
        { is: 'reading', quantity: 'wire-diameter', unit: 'mm' },
        { is: 'reading', quantity: 'core-diameter', unit: 'mm' },
        { is: 'left out' },
      ],
      decimalMark: '.',
      noteLetters: 'international',
      origin: 'copied',
    },
    truth: strings.map(({ note, check }) => ({
      id: check.id,
      note,
      frequency_hz: check.expected,
      // Relative, of the frequency.
      tolerance: check.tolerance.rel,
      density_kg_m3: check.inputs.equivalent_density_on_core_area_kg_m3,
      tension_n: check.inputs.tension_N,
      speakingLength_m: check.inputs.length_m,
      wireDiameter_m: check.inputs.core_diameter_mm! / 1000,
      winding: isWound(check) ? 'wound' : 'plain',
    })),
  };
}
