import type { TorqueFigures } from '../appraisal-report/appraisal-figures.ts';
import type { MachineTable } from '../page-tree.ts';

/** The torque map one row a pin that was read. Grip is empty where it is unknown, and the next column says why. */
export function torqueForMachines(torque: TorqueFigures | undefined): MachineTable {
  const text = (value: number | undefined) => value?.toFixed(3);
  return {
    columns: [
      'key',
      'note',
      'string',
      'section',
      'readings',
      'sharp_n_m',
      'flat_n_m',
      'slack_n_m',
      'not_said_n_m',
      'grip_n_m',
      'grip_standard_uncertainty_n_m',
      'no_grip_because',
      'pull_n_m',
      'margin_n_m',
      'margin_standard_uncertainty_n_m',
      'low',
      'feel',
    ],
    rows: (torque?.pins ?? []).map((pin) => [
      String(pin.key),
      pin.note,
      pin.string === undefined ? undefined : String(pin.string),
      pin.section,
      String(pin.readings.length),
      text(pin.byKind.sharp),
      text(pin.byKind.flat),
      text(pin.byKind.slack),
      text(pin.byKind['not said']),
      text(pin.grip?.grip),
      text(pin.grip?.standardUncertainty),
      pin.whyNoGrip,
      text(pin.pull?.pull),
      text(pin.margin),
      text(pin.marginUncertainty),
      pin.isLow === undefined ? undefined : pin.isLow ? 'yes' : 'no',
      pin.feels.length === 0 ? undefined : pin.feels.join(', '),
    ]),
  };
}
