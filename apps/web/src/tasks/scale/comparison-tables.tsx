import { message, noteName, sayKnown } from '@becket/core';
import type { ScaleComparison } from '@becket/journal';
import { forceText, loadText } from '../../parts/force-text.ts';
import { useLanguage } from '../../parts/language.tsx';
import type { LengthUnit } from '../../parts/length-text.ts';
import { TableFrame } from '../../parts/table-frame.tsx';
import { figures, TableHeads } from '../../parts/table-heads.tsx';
import { beatText, changeLines, signed } from './compare-state.ts';
import { keysText, wireText } from './scale-words.ts';

/** What the sections and bridges bear, before and after. */
export function Loads({ comparison, unit }: { comparison: ScaleComparison; unit: LengthUnit }) {
  const language = useLanguage();
  const { say } = language;
  const load = (force: number | undefined) => (force === undefined ? '–' : loadText(force, unit, language));
  const bearing = (force: number | undefined) => (force === undefined ? '–' : forceText(force, unit));
  const hasBearing = comparison.loads.some(({ after }) => after?.bearing !== undefined);
  return (
    <section aria-labelledby="compared-loads">
      <h3 id="compared-loads">{say('What do the bridges and the plate bear?')}</h3>
      <TableFrame label={say('Loads before and after')}>
        <table className="table">
          <TableHeads
            heads={[
              say('[the load] of'),
              figures(say('[a change] before')),
              figures(say('[a change] after')),
              figures(say('[of a figure] change')),
              ...(hasBearing ? [figures(say('bearing, before → after'))] : []),
            ]}
          />
          <tbody>
            {comparison.loads.map(({ of, name, before, after }) => (
              <tr key={`${of}/${name}`}>
                <th scope="row">
                  {of === 'all'
                    ? sayKnown(name, language)
                    : of === 'section'
                      ? say('section {section}', { section: name })
                      : say('bridge {bridge}', { bridge: name })}
                </th>
                {[before, after].map((one, index) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: before stands first, after second
                  <td key={index} className="number">
                    {load(one?.load)}
                    {one?.loadUncertainty !== undefined && (
                      <span className="faint spread"> ± {loadText(one.loadUncertainty, unit, language)}</span>
                    )}
                  </td>
                ))}
                <td className="number">
                  {before !== undefined && after !== undefined
                    ? signed(after.load - before.load, (force) => loadText(force, unit, language), language)
                    : '–'}
                </td>
                {hasBearing && (
                  <td className="number">
                    {after?.bearing === undefined
                      ? say('not read')
                      : say('{before} → {after} ({count, plural, one {# note} other {# notes}} read)', {
                          before: bearing(before?.bearing?.force),
                          after:
                            after.bearing.standardUncertainty === undefined
                              ? bearing(after.bearing.force)
                              : `${bearing(after.bearing.force)} ± ${bearing(after.bearing.standardUncertainty)}`,
                          count: after.bearing.notes,
                        })}
                  </td>
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
    </section>
  );
}

/** The intervals over the breaks, before and after; a word where none can be told. */
export function Beats({ comparison }: { comparison: ScaleComparison }) {
  const { say } = useLanguage();
  const { beats, breaks, tunedBy } = comparison;
  if (beats.length === 0)
    return (
      <section aria-labelledby="compared-beats">
        <h3 id="compared-beats">{say('How do intervals beat over the break?')}</h3>
        <p>
          {say(
            'That cannot be told yet: no two neighbouring notes beside a break can both be computed. Enter what they lack in Record.',
          )}
        </p>
      </section>
    );
  return (
    <section aria-labelledby="compared-beats">
      <h3 id="compared-beats">{say('How do intervals beat over the break?')}</h3>
      <p className="faint">
        {say(
          'Between {breaks}. Beats a second; a row that rises evenly is heard as even. Tuned by {how, select, stretch {the stretch of each scale’s own inharmonicity} other {equal temperament, as too few notes are known for a stretch}}.',
          {
            breaks: breaks
              .map((key) => say('{lower} and {upper}', { lower: noteName(key - 1), upper: noteName(key) }))
              .join(', '),
            how: tunedBy === 'stretch' ? 'stretch' : 'equal',
          },
        )}
      </p>
      <BeatTable
        label={say('Thirds over the break')}
        beats={beats.filter(({ interval }) => interval === 'major third')}
      />
      <details>
        <summary className="button quiet">{say('Fifths and octaves over the break')}</summary>
        <BeatTable
          label={say('Fifths and octaves over the break')}
          beats={beats.filter(({ interval }) => interval !== 'major third')}
        />
      </details>
    </section>
  );
}

function BeatTable({ label, beats }: { label: string; beats: ScaleComparison['beats'] }) {
  const language = useLanguage();
  const { say } = language;
  return (
    <TableFrame label={label}>
      <table className="table">
        <TableHeads
          heads={[
            say('interval'),
            say('notes'),
            figures(say('[a change] before')),
            figures(say('[a change] after')),
          ]}
        />
        <tbody>
          {beats.map(({ interval, lowerKey, upperKey, before, after }) => (
            <tr key={`${interval}/${lowerKey}`}>
              <th scope="row">{sayKnown(interval, language)}</th>
              <td>
                {noteName(lowerKey)}–{noteName(upperKey)}
              </td>
              <td className="number">{beatText(before, language)}</td>
              <td className="number">{beatText(after, language)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}

interface ChangesProps {
  readonly comparison: ScaleComparison;
  readonly unit: LengthUnit;
  readonly onSelect: (key: number) => void;
}

/** The notes that get another string, one by one. */
export function Changes({ comparison, unit, onSelect }: ChangesProps) {
  const language = useLanguage();
  const { say } = language;
  const lines = changeLines(comparison, unit, language);
  if (lines.length === 0) return null;
  return (
    <section aria-labelledby="compared-notes">
      <h3 id="compared-notes">{say('Which notes change?')}</h3>
      <TableFrame label={say('Changes note by note')}>
        <table className="table changes">
          <TableHeads
            heads={[
              say('note'),
              say('wire'),
              figures(say('tension')),
              figures(say('of break')),
              figures('B'),
            ]}
          />
          <tbody>
            {lines.map(({ key, note, strings, wires, tensions, breakShares, inharmonicities }) => (
              <tr key={key}>
                <th scope="row">
                  <button type="button" className="button quiet" onClick={() => onSelect(key)}>
                    {note} <span className="faint">×{strings}</span>
                  </button>
                </th>
                <td>
                  <Both texts={wires} />
                </td>
                <td className="number">
                  <Both texts={tensions} />
                </td>
                <td className="number">
                  <Both texts={breakShares} />
                </td>
                <td className="number">
                  <Both texts={inharmonicities} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
    </section>
  );
}

function Both({ texts: [before, after] }: { texts: readonly [string, string] }) {
  const { say } = useLanguage();
  return (
    <>
      <span className="faint both">{before}</span>{' '}
      <span className="both">
        <span aria-hidden="true">→ </span>
        <span className="unseen"> {say('becomes')} </span>
        {after}
      </span>
    </>
  );
}

/** What wire the second scale takes. */
export function Wires({ comparison, unit }: { comparison: ScaleComparison; unit: LengthUnit }) {
  const { say } = useLanguage();
  const of = (isPlain: boolean) => comparison.wires.filter(({ use }) => (use === 'plain') === isPlain);
  return (
    <section aria-labelledby="compared-wires">
      <h3 id="compared-wires">{say('What wire does the second one take?')}</h3>
      <WireTable label={say('Plain wire needed')} wires={of(true)} unit={unit} />
      <details>
        <summary className="button quiet">{say('Cores and windings of its wound strings')}</summary>
        <WireTable label={say('Cores and windings')} wires={of(false)} unit={unit} />
      </details>
    </section>
  );
}

const uses = {
  plain: message('[use of a wire] plain'),
  core: message('core'),
  winding: message('[use of a wire] winding'),
} as const;

interface WireTableProps {
  readonly label: string;
  readonly wires: ScaleComparison['wires'];
  readonly unit: LengthUnit;
}

function WireTable({ label, wires, unit }: WireTableProps) {
  const language = useLanguage();
  const { say } = language;
  return (
    <TableFrame label={label}>
      <table className="table">
        <TableHeads heads={[say('[of a wire] use'), say('size'), figures(say('strings')), say('notes')]} />
        <tbody>
          {wires.map(({ use, diameter, strings, keys }) => (
            <tr key={`${use}/${diameter}`}>
              <th scope="row">{say(uses[use])}</th>
              <td>{wireText(diameter, unit, language)}</td>
              <td className="number">{strings}</td>
              <td>{keysText(keys, language)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
