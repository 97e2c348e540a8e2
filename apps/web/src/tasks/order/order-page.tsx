import type { Absence, AsFoundNote, ReadingQuantityName } from '@becket/journal';
import type { PaperFormat, PaperName } from '@becket/tasks';
import { useMemo, useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { sentenceOf } from '../../desk/sentence-of.ts';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useDevice, useSettings } from '../../desk/use-device.ts';
import { Choice } from '../../parts/choice.tsx';
import { type LengthUnit, lengthNumber } from '../../parts/length-text.ts';
import { saveFile } from '../../parts/save-file.ts';
import { TableFrame } from '../../parts/table-frame.tsx';
import { lengthKindOf } from '../../piano/length-kind.ts';
import { bassStrings } from './bass-strings.ts';
import { fetchPaper } from './papers.ts';

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
      <Papers hasBass={bass.notes.length > 0} />
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

function Papers({ hasBass }: { hasBass: boolean }) {
  const { desk } = useDesk();
  const { exchange } = useDevice();
  const { unit } = useSettings();
  const [size, setSize] = useState<'A4' | 'Letter'>('A4');
  const [isMaking, setMaking] = useState(false);
  const [said, setSaid] = useState<{ is: 'good' | 'bad'; sentence: string }>();

  async function fetchIt(paper: PaperName, format: PaperFormat): Promise<void> {
    setMaking(true);
    setSaid(undefined);
    try {
      const { content, fileName } = await fetchPaper(exchange, desk.id, { paper, format, size, units: unit });
      saveFile(content, fileName);
      setSaid({ is: 'good', sentence: `${fileName} is among your downloads.` });
    } catch (error) {
      setSaid({ is: 'bad', sentence: sentenceOf(error) });
    } finally {
      setMaking(false);
    }
  }

  const button = (paper: PaperName, format: PaperFormat, words: string) => (
    <button type="button" className="button" disabled={isMaking} onClick={() => void fetchIt(paper, format)}>
      {words}
    </button>
  );
  return (
    <section aria-labelledby="papers">
      <h2 id="papers">Papers</h2>
      <Choice
        label="Paper size"
        value={size}
        onChange={setSize}
        options={[
          { value: 'A4', words: 'A4' },
          { value: 'Letter', words: 'Letter' },
        ]}
      />
      <div className="button-row">
        {hasBass && (
          <>
            {button('bass-string-order', 'pdf', 'Bass string order, PDF')}
            {button('bass-string-order', 'csv', 'Bass string order, CSV')}
          </>
        )}
        {button('as-found-record', 'pdf', 'As-found record, PDF')}
        {button('as-found-record', 'csv', 'As-found record, CSV')}
      </div>
      <p aria-live="polite" className={said?.is === 'bad' ? 'warn' : undefined}>
        {isMaking
          ? 'The paper is being made …'
          : said && (said.is === 'bad' ? `▲ ${said.sentence}` : said.sentence)}
      </p>
    </section>
  );
}
