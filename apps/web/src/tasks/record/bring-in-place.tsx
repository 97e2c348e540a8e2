import { bringInReadings, type CellProblem, type CellQuestion, type ColumnMeaning } from '@becket/tasks';
import { useMemo, useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { sentenceOf } from '../../desk/sentence-of.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import {
  meaningChoices,
  meaningOfName,
  nameOfMeaning,
  planOf,
  readFile,
  type TableOnItsWay,
  unitsOf,
  usualReasons,
  withChange,
  withMeaning,
  withoutChange,
} from './bring-in-state.ts';

/** Brings a table of readings in: choose, map, correct, then all of it or nothing. */
export function BringInPlace() {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job } = useDesk();
  const [coming, setComing] = useState<TableOnItsWay>();
  const [problem, setProblem] = useState<string>();
  const [done, setDone] = useState<string>();

  async function choose(file: File): Promise<void> {
    setDone(undefined);
    try {
      setProblem(undefined);
      setComing(await readFile(file, language));
    } catch (error) {
      setComing(undefined);
      setProblem(sentenceOf(error, language));
    }
  }

  async function bringIn(): Promise<void> {
    if (coming === undefined) return;
    const result = await desk.run((context, id) => bringInReadings(context, id, coming));
    if (result === undefined) return;
    const { readings, notes } = result.plan.counts;
    setComing(undefined);
    setDone(
      say('{readings} readings of {notes} notes were brought in from {file}.', {
        readings,
        notes,
        file: coming.table.fileName,
      }),
    );
  }

  if (job.piano === undefined) {
    return (
      <p>
        {sayNodes(
          'The piano is not described yet: its lowest and highest note are needed before a table can be read. {link}',
          {
            link: (
              <a href={hashOf({ place: 'job', job: desk.id, task: 'appraise' })}>
                {say('Describe it in Appraise.')}
              </a>
            ),
          },
        )}
      </p>
    );
  }
  return (
    <section aria-labelledby="bring-in">
      <h2 id="bring-in">{say('Bring in a table of readings')}</h2>
      <p>
        {say(
          'A CSV file from your own spreadsheet: a row a note, columns in any order, inches or millimetres, a point or a comma. Nothing goes into the job before you say so, and then all of it or nothing.',
        )}
      </p>
      <label className="button">
        {say('Choose a CSV file')}
        <input
          type="file"
          className="unseen"
          accept=".csv,.tsv,.txt,text/csv"
          onChange={(event) => {
            const file = event.target.files?.[0];
            event.target.value = '';
            if (file) void choose(file);
          }}
        />
      </label>
      <div aria-live="polite">
        {done !== undefined && (
          <p className="notice">
            {done}{' '}
            <a href={hashOf({ place: 'job', job: desk.id, task: 'record' })}>{say('See the readings.')}</a>
          </p>
        )}
      </div>
      <Problem says={problem} />
      {coming !== undefined && <Coming coming={coming} onChange={setComing} onBringIn={bringIn} />}
    </section>
  );
}

interface ComingProps {
  readonly coming: TableOnItsWay;
  readonly onChange: (coming: TableOnItsWay | undefined) => void;
  readonly onBringIn: () => Promise<void>;
}

function Coming({ coming, onChange, onBringIn }: ComingProps) {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const { table, mapping, changes } = coming;
  const { plan, sentence } = useMemo(() => planOf(job, coming, language), [job, coming, language]);
  return (
    <>
      <h3>
        {say('{file}: {rows} rows, {columns} columns', {
          file: table.fileName,
          rows: table.rows.length,
          columns: table.header.length,
        })}
      </h3>
      <ul>
        <li>
          {say('read as {encoding}, decimal mark “{decimalMark}”', {
            encoding: table.encoding,
            decimalMark: mapping.decimalMark,
          })}
        </li>
        {table.notices.map((notice) => (
          <li key={notice}>{notice}</li>
        ))}
      </ul>
      <TableFrame label={say('Columns')}>
        <table className="table">
          <caption>
            {say('What each column means. This is a suggestion; correct it where it is wrong.')}
          </caption>
          <thead>
            <tr>
              <th scope="col">{say('column')}</th>
              <th scope="col">{say('its first cells')}</th>
              <th scope="col">{say('means')}</th>
              <th scope="col">{say('[a unit] in')}</th>
            </tr>
          </thead>
          <tbody>
            {table.header.map((name, column) => (
              // Two columns may bear the same name; their place tells them apart.
              // biome-ignore lint/suspicious/noArrayIndexKey: columns never change places
              <tr key={column}>
                <th scope="row">{name || say('column {number}', { number: column + 1 })}</th>
                <td className="faint">{firstCells(coming, column)}</td>
                <td>
                  <select
                    className="input"
                    aria-label={say('Meaning of column {name}', { name: name || column + 1 })}
                    value={nameOfMeaning(mapping.columns[column] ?? { is: 'left out' })}
                    onChange={(event) =>
                      onChange(
                        withMeaning(
                          coming,
                          column,
                          meaningOfName(event.target.value, mapping.columns[column] ?? { is: 'left out' }),
                        ),
                      )
                    }
                  >
                    {meaningChoices.map((choice) => (
                      <option key={choice.name} value={choice.name}>
                        {say(choice.words)}
                      </option>
                    ))}
                  </select>
                </td>
                <td>
                  <UnitOf
                    name={name || `${column + 1}`}
                    meaning={mapping.columns[column]}
                    onChange={(meaning) => onChange(withMeaning(coming, column, meaning))}
                  />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
      <Problem says={sentence} />
      {plan !== undefined && (
        <>
          <CellList
            title={say('Cells that cannot be read')}
            empty={say('Every cell can be read.')}
            rule={say('Nothing is brought in while one is left: correct it, or leave it out.')}
            cells={plan.problems}
            coming={coming}
            onChange={onChange}
          />
          <CellList
            title={say('Cells in question')}
            empty={say('No value is in question.')}
            rule={say('They may stay as they are.')}
            cells={plan.questions}
            coming={coming}
            onChange={onChange}
          />
          {changes.length > 0 && (
            <TableFrame label={say('Changed cells')}>
              <table className="table">
                <caption>
                  {say('Changed on the way in; what was found and the reason are kept with the job.')}
                </caption>
                <thead>
                  <tr>
                    <th scope="col">{say('row')}</th>
                    <th scope="col">{say('column')}</th>
                    <th scope="col">{say('becomes')}</th>
                    <th scope="col">{say('reason')}</th>
                    <th scope="col">
                      <span className="unseen">{say('take back')}</span>
                    </th>
                  </tr>
                </thead>
                <tbody>
                  {changes.map((change) => (
                    <tr key={`${change.row}/${change.column}`}>
                      <td>{change.row}</td>
                      <td>{table.header[change.column]}</td>
                      <td>{change.use ?? say('left out')}</td>
                      <td>{change.reason}</td>
                      <td>
                        <button
                          type="button"
                          className="button quiet"
                          onClick={() => onChange(withoutChange(coming, change))}
                        >
                          {say('Take back')}
                        </button>
                      </td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </TableFrame>
          )}
          <div className="button-row">
            <button
              type="button"
              className="button strong"
              disabled={plan.problems.length > 0 || plan.counts.readings === 0}
              onClick={once(onBringIn)}
            >
              {say('Bring in {readings} readings', { readings: plan.counts.readings })}
            </button>
            <button type="button" className="button quiet" onClick={() => onChange(undefined)}>
              {say('Leave it')}
            </button>
            <span className="faint">
              {say(
                '{notes} notes, {blank} blank cells{problems, plural, =0 {} one {; # cell stands in the way} other {; # cells stand in the way}}',
                {
                  notes: plan.counts.notes,
                  blank: plan.counts.blankCells,
                  problems: plan.problems.length,
                },
              )}
            </span>
          </div>
        </>
      )}
    </>
  );
}

function firstCells({ table }: TableOnItsWay, column: number): string {
  return table.rows
    .map(({ cells }) => cells[column] ?? '')
    .filter((cell) => cell !== '')
    .slice(0, 3)
    .join(' · ');
}

interface UnitProps {
  readonly name: string;
  readonly meaning: ColumnMeaning | undefined;
  readonly onChange: (meaning: ColumnMeaning) => void;
}

function UnitOf({ name, meaning, onChange }: UnitProps) {
  const { say } = useLanguage();
  if (meaning?.is !== 'reading') return null;
  return (
    <select
      className="input"
      aria-label={say('Unit of column {name}', { name })}
      value={meaning.unit}
      onChange={(event) => onChange({ ...meaning, unit: event.target.value as typeof meaning.unit })}
    >
      {unitsOf(meaning.quantity).map((unit) => (
        <option key={unit} value={unit}>
          {unit === 'mil' ? say('thousandths of an inch') : unit}
        </option>
      ))}
    </select>
  );
}

interface CellListProps {
  readonly title: string;
  readonly empty: string;
  readonly rule: string;
  readonly cells: readonly (CellProblem | CellQuestion)[];
  readonly coming: TableOnItsWay;
  readonly onChange: (coming: TableOnItsWay) => void;
}

const mostShown = 60;

function CellList({ title, empty, rule, cells, coming, onChange }: CellListProps) {
  const { say } = useLanguage();
  if (cells.length === 0) return <p className="faint">{empty}</p>;
  return (
    <section aria-label={title}>
      <h3>
        {title}: {cells.length}
      </h3>
      <p>{rule}</p>
      <ul className="cell-list">
        {cells.slice(0, mostShown).map((cell) => (
          <li key={`${cell.row}/${cell.column}`}>
            <CellCorrection cell={cell} coming={coming} onChange={onChange} />
          </li>
        ))}
      </ul>
      {cells.length > mostShown && (
        <p>
          {say(
            '… and {count} more. When this many cannot be read, look at the meanings and units of the columns first.',
            { count: cells.length - mostShown },
          )}
        </p>
      )}
    </section>
  );
}

function CellCorrection({
  cell,
  coming,
  onChange,
}: Pick<CellListProps, 'coming' | 'onChange'> & { cell: CellProblem | CellQuestion }) {
  const { say } = useLanguage();
  const suggestion = 'suggestion' in cell ? cell.suggestion : undefined;
  const [use, setUse] = useState(suggestion ?? cell.found);
  const [reason, setReason] = useState('');
  const name = say('row {row}, {column}', { row: cell.row, column: cell.columnName });
  const { row, column } = cell;
  return (
    <>
      <p>{cell.sentence}</p>
      <div className="row-form">
        <label className="field">
          <span className="field-label">{say('Use instead')}</span>
          <input
            className="input"
            aria-label={say('Use instead in {name}', { name })}
            value={use}
            onChange={(event) => setUse(event.target.value)}
          />
        </label>
        <label className="field">
          <span className="field-label">{say('Reason')}</span>
          <input
            className="input"
            aria-label={say('Reason for {name}', { name })}
            value={reason}
            placeholder={say(usualReasons.changed)}
            maxLength={300}
            onChange={(event) => setReason(event.target.value)}
          />
        </label>
        <button
          type="button"
          className="button"
          aria-label={say('Correct {name}', { name })}
          disabled={use.trim() === '' || use.trim() === cell.found}
          onClick={() =>
            onChange(
              withChange(coming, {
                row,
                column,
                use: use.trim(),
                reason: reason.trim() || say(usualReasons.changed),
              }),
            )
          }
        >
          {say('Correct')}
        </button>
        <button
          type="button"
          className="button quiet"
          aria-label={say('Leave out {name}', { name })}
          onClick={() =>
            onChange(
              withChange(coming, {
                row,
                column,
                use: null,
                reason: reason.trim() || say(usualReasons['left out']),
              }),
            )
          }
        >
          {say('Leave out')}
        </button>
      </div>
    </>
  );
}
