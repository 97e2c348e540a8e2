import { english, inPoundsForce } from '@becket/core';
import { type BassOrder, bassQuantities, type Job } from '@becket/journal';
import { lengthText } from '../figures/lengths.ts';
import type { MachineCell, MachineTable } from '../page-tree.ts';
import type { OrderLine } from './order-lines.ts';
import { bassLengthKind } from './order-table.ts';

/**
 * The order one line a string. Each length has its value in both units and a state: 'read', 'chosen scale', 'worked out',
 * 'unknown', 'none', 'does not apply' or 'not read'; a value stands only beside one of the first three.
 */
export function orderForMachines(job: Job, order: BassOrder, lines: readonly OrderLine[]): MachineTable {
  return {
    columns: [
      'key',
      'note',
      'string',
      'side',
      'section',
      'layers',
      ...bassQuantities.flatMap((name) => {
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
      'strings_digest_sha256',
      'record_digest_sha256',
    ],
    rows: lines.map((line) => rowOf(line, order, job.seal?.digest)),
  };
}

function rowOf(
  { string, analysis }: OrderLine,
  order: BassOrder,
  recordDigest: string | undefined,
): MachineCell[] {
  const lengths = bassQuantities.flatMap((name): MachineCell[] => {
    const stated = string.stated[name];
    if (stated.is === 'absent') return [undefined, undefined, stated.why];
    const kind = bassLengthKind(name);
    return [
      lengthText(stated.value, 'mm', kind, english),
      lengthText(stated.value, 'in', kind, english),
      stated.from,
    ];
  });
  return [
    String(string.key),
    string.note,
    String(string.string),
    string.side,
    string.section,
    String(string.layers),
    ...lengths,
    string.loopStyle,
    string.twist,
    order.scaleNotes.get(string.key)?.frequency.toFixed(3),
    analysis?.tension.toFixed(1),
    analysis === undefined ? undefined : inPoundsForce(analysis.tension).toFixed(1),
    analysis?.standardUncertainties?.tension.toFixed(1),
    analysis === undefined ? undefined : (analysis.breakShare * 100).toFixed(1),
    analysis?.strengthTable,
    order.digest,
    recordDigest,
  ];
}
