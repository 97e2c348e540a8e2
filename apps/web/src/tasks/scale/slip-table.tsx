import { noteName, type ScaleNote } from '@becket/core';
import { useMemo } from 'react';
import { useSettings } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { figures, TableHeads } from '../../parts/table-heads.tsx';
import { slipLines } from './slip-lines.ts';

/** What a slip of the rule or of the micrometer would do to a note. */
export function SlipTable({ note, strengthTable }: { note: ScaleNote; strengthTable: string }) {
  const language = useLanguage();
  const { say } = language;
  const { unit } = useSettings();
  const lines = useMemo(
    () => slipLines(note, strengthTable, unit, language),
    [note, strengthTable, unit, language],
  );
  return (
    <TableFrame label={say('What a small slip does to {note}', { note: noteName(note.key) })}>
      <table className="table">
        <caption>{say('What a small slip does to this note')}</caption>
        <TableHeads
          heads={[say('slip'), figures(say('tension')), figures(say('of the break load')), figures('B')]}
        />
        <tbody>
          {lines.map(({ change, tension, share, b }) => (
            <tr key={change}>
              <th scope="row">{change}</th>
              <td className="number">{tension}</td>
              <td className="number">{share}</td>
              <td className="number">{b}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
