import { noteName } from '@becket/core';
import type { Job } from '@becket/journal';
import type { MachineTable } from '../page-tree.ts';
import type { ChangeLine } from './change-lines.ts';

/** The change order one line a row. A price stands only beside 'priced', days only beside 'said'. */
export function changeForMachines({ seal }: Job, lines: readonly ChangeLine[]): MachineTable {
  return {
    columns: [
      'line',
      'entry',
      'noted_at',
      'noted_by',
      'section',
      'key',
      'note',
      'string',
      'point',
      'what',
      'gravity',
      'reason_not_seen_before',
      'what_to_do',
      'price_minor_units',
      'currency',
      'price_state',
      'working_days',
      'working_days_state',
      'answer',
      'answered_by',
      'answered_on',
      'photo_sha256',
      'record_digest_sha256',
    ],
    rows: lines.map(({ number, damage, answer }) => {
      const { entry, at, by, place, what, gravity, reason, whatToDo, priceMinorUnits, currency, days } =
        damage;
      return [
        String(number),
        entry,
        at,
        by,
        place.section,
        place.key === undefined ? undefined : String(place.key),
        place.key === undefined ? undefined : noteName(place.key),
        place.string === undefined ? undefined : String(place.string),
        place.point,
        what,
        gravity,
        reason,
        whatToDo,
        priceMinorUnits === undefined ? undefined : String(priceMinorUnits),
        currency,
        priceMinorUnits === undefined ? 'not priced' : 'priced',
        days === undefined ? undefined : String(days),
        days === undefined ? 'not said' : 'said',
        answer?.answer ?? 'waiting',
        answer?.name,
        answer?.on,
        damage.photo,
        seal?.digest,
      ];
    }),
  };
}
