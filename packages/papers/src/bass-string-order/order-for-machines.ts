import { inPoundsForce } from '@becket/core';
import type { Job } from '@becket/journal';
import { lengthText } from '../figures/lengths.ts';
import { lengthKindOf } from '../figures/readings.ts';
import type { MachineCell, MachineTable } from '../page-tree.ts';
import { hasInnerLayer, type OrderLine, orderedQuantities } from './order-lines.ts';

/**
 * The order one line a note. Each length has its value in both units and a state: 'read', 'unknown', 'none',
 * 'does not apply' or 'not read'; a value stands only beside 'read'.
 */
export function orderForMachines(job: Job, lines: readonly OrderLine[]): MachineTable {
  const names = [...orderedQuantities.map(([quantity]) => quantity), 'hitch-pin-diameter' as const];
  return {
    columns: [
      'key',
      'note',
      'section',
      'number_wanted',
      'layers',
      ...names.flatMap((name) => {
        const column = name.replaceAll('-', '_');
        return [`${column}_mm`, `${column}_in`, `${column}_state`];
      }),
      'loop_style',
      'winding_runs',
      'pitch_hz',
      'tension_n',
      'tension_lbf',
      'tension_standard_uncertainty_n',
      'core_break_share_percent',
      'strength_table',
      'record_digest_sha256',
    ],
    rows: lines.map((line) => rowOf(line, names, job.seal?.digest)),
  };
}

function rowOf(
  { note, analysis, winding }: OrderLine,
  names: readonly ((typeof orderedQuantities)[number][0] | 'hitch-pin-diameter')[],
  digest: string | undefined,
): MachineCell[] {
  const lengths = names.flatMap((name): MachineCell[] => {
    const figure = note.figures[name];
    if (figure !== undefined) {
      const kind = lengthKindOf(name);
      return [lengthText(figure.value, 'mm', kind), lengthText(figure.value, 'in', kind), 'read'];
    }
    if (name === 'inner-layer-diameter' && !hasInnerLayer(note))
      return [undefined, undefined, 'does not apply'];
    return [undefined, undefined, note.absences[name] ?? 'not read'];
  });
  return [
    String(note.key),
    note.note,
    note.section?.section,
    note.strings === undefined ? undefined : String(note.strings),
    String(note.layers),
    ...lengths,
    winding?.loopStyle,
    winding?.twist,
    note.frequency.toFixed(3),
    analysis?.tension.toFixed(1),
    analysis === undefined ? undefined : inPoundsForce(analysis.tension).toFixed(1),
    analysis?.standardUncertainties?.tension.toFixed(1),
    analysis === undefined ? undefined : (analysis.breakShare * 100).toFixed(1),
    analysis?.strengthTable,
    digest,
  ];
}
