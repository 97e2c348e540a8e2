import { offsetOf, type PassValue, type Settling } from '@becket/journal';
import type { MachineCell, MachineTable } from '../page-tree.ts';

/** One row a section of a pass: means in cents, and how many notes were read for each; none is the mean of the section. */
export function settlingForMachines({ passes }: Settling): MachineTable {
  return {
    columns: [
      'pass',
      'on',
      'by',
      'a4_hz',
      'temperature_c',
      'relative_humidity_percent',
      'order',
      'section',
      'before_cents',
      'before_notes',
      'aimed_cents',
      'after_cents',
      'after_notes',
      'later_cents',
      'broke',
      'slipped',
    ],
    rows: passes.flatMap((pass, index) =>
      pass.sections.map(({ section, before, aimed, after }, order) => [
        String(pass.pass),
        pass.on,
        pass.by,
        plainNumber(pass.referencePitch_hz),
        plainNumber(pass.temperature_c),
        plainNumber(pass.relativeHumidity_percent),
        String(order + 1),
        section,
        ...withNotes(before),
        mean(aimed),
        ...withNotes(after),
        mean(passes[index + 1]?.sections.find((one) => one.section === section)?.before ?? []),
        // Of the whole pass, on each of its rows.
        String(pass.mishaps.filter(({ what }) => what === 'broke').length),
        String(pass.mishaps.filter(({ what }) => what === 'slipped').length),
      ]),
    ),
  };
}

const mean = (values: readonly PassValue[]): MachineCell => plainNumber(offsetOf(values)?.offset);

const withNotes = (values: readonly PassValue[]): MachineCell[] => [
  mean(values),
  values.length === 0 ? undefined : String(values.filter(({ key }) => key !== undefined).length),
];

const plainNumber = (value: number | undefined): MachineCell =>
  value === undefined ? undefined : String(Number(value.toPrecision(6)));
