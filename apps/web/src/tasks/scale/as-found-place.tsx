import {
  COMMON_SHOP_POLICY,
  type LoadShare,
  message,
  noteName,
  type ScaleFinding,
  sayKnown,
  scaleFindings,
} from '@becket/core';
import { notesLeftOut } from '@becket/tasks';
import { useMemo } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { loadText } from '../../parts/force-text.ts';
import { useLanguage } from '../../parts/language.tsx';
import { otherUnit } from '../../parts/length-text.ts';
import { TableFrame } from '../../parts/table-frame.tsx';
import { figures, TableHeads } from '../../parts/table-heads.tsx';
import { CompassChart } from '../../piano/compass-chart.tsx';
import { scaleCharts } from './charts.ts';
import { useScaleAsFound } from './use-scale.ts';

const uncertaintyWords = {
  'on the way': message('Working out the uncertainties …'),
  there: message('Every figure carries its standard uncertainty.'),
  'cannot be had': message(
    'The uncertainties cannot be worked out: readings of one note contradict each other. See the values in question in Record.',
  ),
} as const;

/** The scale as it was found: three charts, the loads, and what they say. */
export function AsFoundPlace() {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job, record } = useDesk();
  const { unit } = useSettings();
  const [selected, select] = useSelectedKey();
  const { analysis, notComputed, uncertainties } = useScaleAsFound(job, record);
  const findings = useMemo(() => scaleFindings(analysis, undefined, language), [analysis, language]);
  const charts = useMemo(() => scaleCharts(analysis, unit, language), [analysis, unit, language]);
  const leftOut = useMemo(
    () =>
      notesLeftOut(
        job,
        analysis.notes.map(({ key }) => key),
        language,
      ),
    [job, analysis, language],
  );
  const { piano } = job;

  if (piano === undefined || analysis.notes.length === 0) {
    return (
      <>
        <h2>{say('Scale as found')}</h2>
        <p>
          {sayNodes(
            'No string can be computed yet: a note needs its stringing, its wire and its speaking length. {link}',
            {
              link: (
                <a href={hashOf({ place: 'job', job: desk.id, task: 'record' })}>
                  {say('Enter readings in Record.')}
                </a>
              ),
            },
          )}
        </p>
      </>
    );
  }
  return (
    <>
      <h2>{say('Scale as found')}</h2>
      <p className="faint" role="status">
        {say(uncertaintyWords[uncertainties])}
      </p>
      <div className="charts">
        {charts.map(({ name, question, ...chart }) => (
          <CompassChart
            key={name}
            title={question}
            {...chart}
            firstKey={piano.firstKey}
            lastKey={piano.lastKey}
            sections={job.sections}
            selected={selected}
            onSelect={select}
          />
        ))}
      </div>
      <Findings findings={findings} />
      <Loads title={say('Load by section')} rows={analysis.sections} />
      <Loads title={say('Load by bridge')} rows={analysis.bridges} />
      <p>
        {sayNodes(
          'All together {load} ({also}){known, select, yes {, ± {uncertainty},} other {}} over {strings} strings{missing, plural, =0 {} one {, without # note that cannot be computed yet} other {, without # notes that cannot be computed yet}}.',
          {
            load: <strong>{loadText(analysis.total, unit, language)}</strong>,
            also: loadText(analysis.total, otherUnit(unit), language),
            known: analysis.totalUncertainty === undefined ? 'no' : 'yes',
            uncertainty: loadText(analysis.totalUncertainty ?? 0, unit, language),
            strings: analysis.totalStrings,
            missing: notComputed.length,
          },
        )}
      </p>
      {notComputed.length > 0 && (
        <section aria-labelledby="not-computed">
          <h2 id="not-computed">{say('Not computed yet')}</h2>
          <ul className="not-computed">
            {leftOut.map(({ keys, notes, because }) => (
              <li key={because}>
                <a
                  href={hashOf({ place: 'job', job: desk.id, task: 'record' })}
                  onClick={() => select(keys[0])}
                >
                  {notes}
                </a>
                : {because}
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

function Findings({ findings }: { findings: readonly ScaleFinding[] }) {
  const language = useLanguage();
  const { say } = language;
  const [, select] = useSelectedKey();
  const beyond = findings.filter(({ weight }) => weight === 'beyond a limit');
  const told = findings.filter(({ weight }) => weight !== 'beyond a limit');
  return (
    <section aria-labelledby="findings">
      <h2 id="findings">{say('What stands out')}</h2>
      {beyond.length === 0 ? (
        <p>{say('Nothing that can be computed lies beyond the shop’s limits.')}</p>
      ) : (
        <ul className="findings">
          {beyond.map((finding) => (
            <li key={finding.sentence}>
              <span aria-hidden="true">▲ </span>
              {finding.sentence}
              {finding.keys.length > 0 && (
                <button type="button" className="button quiet" onClick={() => select(finding.keys[0])}>
                  {say('See {note}', { note: noteName(finding.keys[0]!) })}
                </button>
              )}
            </li>
          ))}
        </ul>
      )}
      {told.length > 0 && (
        <ul>
          {told.map(({ sentence }) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      <p className="faint">
        {say('Limits are the shop’s own and start from {source}; they are not physics.', {
          source: sayKnown(COMMON_SHOP_POLICY.limits.highestBreakShare.source, language),
        })}{' '}
        {beyond.map(({ remark }) => remark).find((remark) => remark !== '')}
      </p>
    </section>
  );
}

function Loads({ title, rows }: { title: string; rows: readonly LoadShare[] }) {
  const language = useLanguage();
  const { say } = language;
  const { unit } = useSettings();
  return (
    <TableFrame label={title}>
      <table className="table">
        <caption>{title}</caption>
        <TableHeads
          heads={[
            say('name'),
            say('notes'),
            figures(say('strings')),
            figures(say('load')),
            figures(say('also as')),
          ]}
        />
        <tbody>
          {rows.map(({ name, firstKey, lastKey, strings, load, loadUncertainty }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>
                {firstKey === undefined || lastKey === undefined
                  ? ''
                  : say('{first} to {last}', { first: noteName(firstKey), last: noteName(lastKey) })}
              </td>
              <td className="number">{strings}</td>
              <td className="number">
                {loadText(load, unit, language)}
                {loadUncertainty !== undefined && (
                  <span className="faint"> ± {loadText(loadUncertainty, unit, language)}</span>
                )}
              </td>
              <td className="number">{loadText(load, otherUnit(unit), language)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
