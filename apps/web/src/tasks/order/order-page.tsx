import type { Absence, AsFoundNote, ReadingQuantityName } from '@becket/journal';
import { useMemo } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { type LengthUnit, lengthNumber } from '../../parts/length-text.ts';
import { TableFrame } from '../../parts/table-frame.tsx';
import { lengthKindOf } from '../../piano/length-kind.ts';
import { Papers } from '../../piano/papers.tsx';
import { bassStrings } from './bass-strings.ts';

const orderColumns: readonly { readonly quantity: ReadingQuantityName; readonly short: string }[] = [
  { quantity: 'core-diameter', short: 'core' },
  { quantity: 'inner-layer-diameter', short: 'inner layer' },
  { quantity: 'over-all-diameter', short: 'over all' },
  { quantity: 'speaking-length', short: 'speaking length' },
  { quantity: 'bare-front', short: 'bare front' },
  { quantity: 'bare-back', short: 'bare bridge' },
];

/** The bass string order, and the papers that can be had now. */
export function OrderPage() {
  const { desk, job, record } = useDesk();
  const { unit } = useSettings();
  const [, select] = useSelectedKey();
  const bass = useMemo(() => bassStrings(record.notes), [record]);
  const toRecord = hashOf({ place: 'job', job: desk.id, task: 'record' });
  const columns = orderColumns.filter(
    ({ quantity }) => quantity !== 'inner-layer-diameter' || bass.notes.some(({ layers }) => layers === 2),
  );
  return (
    <>
      <section aria-labelledby="bass-order">
        <h2 id="bass-order">Bass string order</h2>
        {bass.notes.length === 0 ? (
          <p>
            No wound string is described yet. <a href={toRecord}>Describe the stringing in Record.</a>
          </p>
        ) : (
          <>
            <p className="notice">
              {bass.incomplete.length === 0 ? (
                <>
                  ● {bass.strings} wound strings of {bass.notes.length} notes, every needed value is there.
                  These are the values as found; wear and a change of scale are not allowed for.
                </>
              ) : (
                <>
                  ▲ {bass.incomplete.length} of {bass.notes.length} notes cannot be ordered yet:{' '}
                  {bass.incomplete.map(({ note }) => note).join(', ')}. A set made from guesses cannot be sent
                  back.
                </>
              )}
              {job.seal === undefined && ' The as-found record is not sealed; the paper says so.'}
            </p>
            <TableFrame label="Wound strings">
              <table className="table">
                <caption>
                  Preview, in {unit === 'mm' ? 'millimetres' : 'inches'}. The paper has both units, and where
                  each figure comes from.
                </caption>
                <thead>
                  <tr>
                    <th scope="col">note</th>
                    <th scope="col" className="number">
                      strings
                    </th>
                    {columns.map(({ quantity, short }) => (
                      <th key={quantity} scope="col" className="number">
                        {short}
                      </th>
                    ))}
                  </tr>
                </thead>
                <tbody>
                  {bass.notes.map((note) => (
                    <tr key={note.key} data-incomplete={note.string === undefined || undefined}>
                      <th scope="row">
                        <a href={toRecord} onClick={() => select(note.key)}>
                          {note.note}
                        </a>
                      </th>
                      <td className="number">{note.strings}</td>
                      {columns.map(({ quantity }) => (
                        <td key={quantity} className="number">
                          {cellWords(note, quantity, unit)}
                        </td>
                      ))}
                    </tr>
                  ))}
                </tbody>
              </table>
            </TableFrame>
          </>
        )}
      </section>
      <Papers
        offers={[
          ...(bass.notes.length > 0
            ? [{ paper: 'bass-string-order', words: 'Bass string order' } as const]
            : []),
          { paper: 'as-found-record', words: 'As-found record' },
          ...(job.damages.length > 0 ? [{ paper: 'change-order', words: 'Change order' } as const] : []),
        ]}
      />
      <section className="not-yet">
        <h2>Not there yet</h2>
        <ul>
          <li>plain wire, pins, felts and sundries against stock, with margins and prices</li>
          <li>the purchase list, and the order of a changed scale</li>
        </ul>
      </section>
    </>
  );
}

function cellWords(note: AsFoundNote, quantity: ReadingQuantityName, unit: LengthUnit) {
  const figure = note.figures[quantity];
  if (figure !== undefined) return lengthNumber(figure.value, unit, lengthKindOf(quantity));
  const absence: Absence | undefined = note.absences[quantity];
  if (absence !== undefined && absence !== 'unknown') return absence;
  return note.needed.includes(quantity) ? <span className="warn">{absence ?? 'missing'}</span> : '';
}
