import { COMMON_SHOP_POLICY, type LoadShare, noteName, type ScaleFinding, scaleFindings } from '@becket/core';
import { readingQuantities } from '@becket/journal';
import { useMemo } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { loadText } from '../../parts/force-text.ts';
import { otherUnit } from '../../parts/length-text.ts';
import { TableFrame } from '../../parts/table-frame.tsx';
import { CompassChart } from '../../piano/compass-chart.tsx';
import { scaleCharts } from './charts.ts';
import { useScaleAsFound } from './use-scale.ts';

const uncertaintyWords = {
  'on the way': 'Working out the uncertainties …',
  there: 'Every figure carries its standard uncertainty.',
  'cannot be had':
    'The uncertainties cannot be worked out: readings of one note contradict each other. See the values in question in Record.',
} as const;

/** The scale as it was found: three charts, the loads, and what they say. */
export function AsFoundPlace() {
  const { desk, job, record } = useDesk();
  const { unit } = useSettings();
  const [selected, select] = useSelectedKey();
  const { analysis, notComputed, uncertainties } = useScaleAsFound(job, record);
  const findings = useMemo(() => scaleFindings(analysis), [analysis]);
  const charts = useMemo(() => scaleCharts(analysis, unit), [analysis, unit]);
  const { piano } = job;

  if (piano === undefined || analysis.notes.length === 0) {
    return (
      <>
        <h2>Scale as found</h2>
        <p>
          No string can be computed yet: a note needs its stringing, its wire and its speaking length.{' '}
          <a href={hashOf({ place: 'job', job: desk.id, task: 'record' })}>Enter readings in Record.</a>
        </p>
      </>
    );
  }
  return (
    <>
      <h2>Scale as found</h2>
      <p className="faint" role="status">
        {uncertaintyWords[uncertainties]}
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
      <Loads title="Load by section" rows={analysis.sections} />
      <Loads title="Load by bridge" rows={analysis.bridges} />
      <p>
        All together <strong>{loadText(analysis.total, unit)}</strong> (
        {loadText(analysis.total, otherUnit(unit))})
        {analysis.totalUncertainty !== undefined && `, ± ${loadText(analysis.totalUncertainty, unit)},`} over{' '}
        {analysis.totalStrings} strings
        {notComputed.length > 0 &&
          `, without ${notComputed.length === 1 ? '1 note that cannot' : `${notComputed.length} notes that cannot`} be computed yet`}
        .
      </p>
      {notComputed.length > 0 && (
        <section aria-labelledby="not-computed">
          <h2 id="not-computed">Not computed yet</h2>
          <ul className="not-computed">
            {notComputed.map(({ key, note, missing, strings, contradiction }) => (
              <li key={key}>
                <a href={hashOf({ place: 'job', job: desk.id, task: 'record' })} onClick={() => select(key)}>
                  {note}
                </a>
                :{' '}
                {contradiction ??
                  (strings === undefined
                    ? 'how it is strung is not described'
                    : missing.length > 0
                      ? `no ${missing.map((quantity) => readingQuantities[quantity].label).join(', no ')}`
                      : 'a needed value was answered with none or does not apply')}
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

function Findings({ findings }: { findings: readonly ScaleFinding[] }) {
  const [, select] = useSelectedKey();
  const beyond = findings.filter(({ weight }) => weight === 'beyond a limit');
  const told = findings.filter(({ weight }) => weight !== 'beyond a limit');
  return (
    <section aria-labelledby="findings">
      <h2 id="findings">What stands out</h2>
      {beyond.length === 0 ? (
        <p>Nothing that can be computed lies beyond the shop’s limits.</p>
      ) : (
        <ul className="findings">
          {beyond.map((finding) => (
            <li key={finding.sentence}>
              <span aria-hidden="true">▲ </span>
              {finding.sentence}
              {finding.keys.length > 0 && (
                <button type="button" className="button quiet" onClick={() => select(finding.keys[0])}>
                  See {noteName(finding.keys[0]!)}
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
        Limits are the shop’s own and start from {COMMON_SHOP_POLICY.limits.highestBreakShare.source}; they
        are not physics. {beyond.map(({ remark }) => remark).find((remark) => remark !== '') ?? ''}
      </p>
    </section>
  );
}

function Loads({ title, rows }: { title: string; rows: readonly LoadShare[] }) {
  const { unit } = useSettings();
  return (
    <TableFrame label={title}>
      <table className="table">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">name</th>
            <th scope="col">notes</th>
            <th scope="col" className="number">
              strings
            </th>
            <th scope="col" className="number">
              load
            </th>
            <th scope="col" className="number">
              also as
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, firstKey, lastKey, strings, load, loadUncertainty }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>
                {firstKey === undefined || lastKey === undefined
                  ? ''
                  : `${noteName(firstKey)} to ${noteName(lastKey)}`}
              </td>
              <td className="number">{strings}</td>
              <td className="number">
                {loadText(load, unit)}
                {loadUncertainty !== undefined && (
                  <span className="faint"> ± {loadText(loadUncertainty, unit)}</span>
                )}
              </td>
              <td className="number">{loadText(load, otherUnit(unit))}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
