import { message, noteName, sayKnown } from '@becket/core';
import { chosenScaleOf, type ScaleComparison, type WhichScale } from '@becket/journal';
import { comparedScales } from '@becket/tasks';
import { useMemo } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { forceText, loadText } from '../../parts/force-text.ts';
import { useLanguage } from '../../parts/language.tsx';
import type { LengthUnit } from '../../parts/length-text.ts';
import { useObservable } from '../../parts/observable.ts';
import { Problem } from '../../parts/problem.tsx';
import { SelectField } from '../../parts/select-field.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { Papers } from '../../piano/papers.tsx';
import {
  beatText,
  changeLines,
  comparisonCharts,
  pairOf,
  scaleChoices,
  signed,
  standingPair,
  summarySentences,
  tableOfPair,
} from './compare-state.ts';
import { ComparisonChart } from './comparison-chart.tsx';
import { NoStringYet } from './no-string-yet.tsx';
import { keysText, wireText } from './scale-words.ts';
import { useAnalysed } from './use-analysed.ts';

/** Two scales of this piano side by side: what changes, what it does, and what wire it takes. */
export function ComparePlace() {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const [selected, select] = useSelectedKey();
  const pair = pairOf(desk.id);
  const { before: first, after: second, beside: third } = standingPair(job, useObservable(pair), language);
  const table = tableOfPair(job, { before: first, after: second });
  const before = useAnalysed(job, first, table);
  const after = useAnalysed(job, second, table);
  const beside = useAnalysed(job, third ?? second, table);
  const comparison = useMemo(() => comparedScales(job, before, after), [job, before, after]);
  const charts = useMemo(
    () => comparisonCharts(before, after, unit, third === undefined ? undefined : beside, language),
    [before, after, unit, third, beside, language],
  );
  const choices = scaleChoices(job, language);
  const { piano } = job;

  if (piano === undefined || before.notes.length === 0) return <NoStringYet title={say('Compare')} />;
  if (choices.length === 1) {
    return (
      <>
        <h2>{say('Compare')}</h2>
        <p>
          {sayNodes('There is only the scale as it was found. {link}', {
            link: (
              <a href={hashOf({ place: 'job', job: desk.id, task: 'scale', part: 'propose' })}>
                {say('Make a proposal first.')}
              </a>
            ),
          })}
        </p>
      </>
    );
  }
  return (
    <>
      <h2>{say('Compare')}</h2>
      <ChosenLine />
      <div className="fields">
        <SelectField<WhichScale>
          label={say('Before')}
          value={first}
          onChange={(value) => pair.update({ before: value })}
          options={choices}
        />
        <SelectField<WhichScale>
          label={say('After')}
          value={second}
          onChange={(value) => pair.update({ after: value })}
          options={choices}
        />
        {choices.length > 2 && (
          <SelectField
            label={say('Beside them, in the charts')}
            value={third ?? 'none'}
            onChange={(value) => pair.update({ beside: value === 'none' ? undefined : value })}
            options={[{ value: 'none', words: say('none') }, ...choices]}
          />
        )}
      </div>
      <ul className="summary">
        {summarySentences(comparison, before, after, unit, language).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <div className="charts">
        {charts.map((chart) => (
          <ComparisonChart
            key={chart.name}
            {...chart}
            firstKey={piano.firstKey}
            lastKey={piano.lastKey}
            sections={job.sections}
            selected={selected}
            onSelect={select}
          />
        ))}
      </div>
      <Loads comparison={comparison} unit={unit} />
      <Beats comparison={comparison} />
      <Changes comparison={comparison} unit={unit} onSelect={select} />
      <Wires comparison={comparison} unit={unit} />
      <Papers offers={[{ paper: 'scale-comparison', words: say('Scale comparison') }]} level={3} />
      <p className="faint">
        {say(
          'The paper compares the scale as found with the one that is chosen, or with the latest proposal.',
        )}
      </p>
    </>
  );
}

/** Which scale is to be strung, and whether it still is what was chosen. */
export function ChosenLine() {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { job } = useDesk();
  const chosen = chosenScaleOf(job, language);
  if (chosen === undefined) return <p className="faint">{say('No scale is chosen for stringing yet.')}</p>;
  if (chosen.changedSince !== undefined) return <Problem says={chosen.changedSince} />;
  return (
    <p>
      {sayNodes('Chosen for stringing: {strong}, because “{reason}”.', {
        strong: <strong>{chosen.name}</strong>,
        reason: chosen.reason,
      })}
    </p>
  );
}

function Loads({ comparison, unit }: { comparison: ScaleComparison; unit: LengthUnit }) {
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
          <thead>
            <tr>
              <th scope="col">{say('[the load] of')}</th>
              <th scope="col" className="number">
                {say('[a change] before')}
              </th>
              <th scope="col" className="number">
                {say('[a change] after')}
              </th>
              <th scope="col" className="number">
                {say('[of a figure] change')}
              </th>
              {hasBearing && (
                <th scope="col" className="number">
                  {say('bearing, before → after')}
                </th>
              )}
            </tr>
          </thead>
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
                <td className="number">{load(before?.load)}</td>
                <td className="number">
                  {load(after?.load)}
                  {after?.loadUncertainty !== undefined && (
                    <span className="faint"> ± {loadText(after.loadUncertainty, unit, language)}</span>
                  )}
                </td>
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

function Beats({ comparison }: { comparison: ScaleComparison }) {
  const { say } = useLanguage();
  const { beats, breaks, tunedBy } = comparison;
  if (beats.length === 0) return null;
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
        <thead>
          <tr>
            <th scope="col">{say('interval')}</th>
            <th scope="col">{say('notes')}</th>
            <th scope="col" className="number">
              {say('[a change] before')}
            </th>
            <th scope="col" className="number">
              {say('[a change] after')}
            </th>
          </tr>
        </thead>
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

function Changes({ comparison, unit, onSelect }: ChangesProps) {
  const language = useLanguage();
  const { say } = language;
  const lines = changeLines(comparison, unit, language);
  if (lines.length === 0) return null;
  return (
    <section aria-labelledby="compared-notes">
      <h3 id="compared-notes">{say('Which notes change?')}</h3>
      <TableFrame label={say('Changes note by note')}>
        <table className="table changes">
          <thead>
            <tr>
              <th scope="col">{say('note')}</th>
              <th scope="col">{say('wire')}</th>
              <th scope="col" className="number">
                {say('tension')}
              </th>
              <th scope="col" className="number">
                {say('of break')}
              </th>
              <th scope="col" className="number">
                B
              </th>
            </tr>
          </thead>
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
      <span className="faint">{before}</span>
      <span aria-hidden="true"> → </span>
      <span className="unseen"> {say('becomes')} </span>
      {after}
    </>
  );
}

function Wires({ comparison, unit }: { comparison: ScaleComparison; unit: LengthUnit }) {
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
        <thead>
          <tr>
            <th scope="col">{say('[of a wire] use')}</th>
            <th scope="col">{say('size')}</th>
            <th scope="col" className="number">
              {say('strings')}
            </th>
            <th scope="col">{say('notes')}</th>
          </tr>
        </thead>
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
