import './settle.css';
import { isFinished } from '@becket/journal';
import { raisingCautions } from '@becket/tasks';
import { useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { BeginPass } from './begin-pass.tsx';
import { PassSheet } from './pass-sheet.tsx';
import { PlanTable } from './plan-table.tsx';
import { useSettling } from './use-settling.ts';

/** The pass that is under way, or the next one to begin. */
export function PassPlace() {
  const { desk, job } = useDesk();
  const { say, sayNodes } = useLanguage();
  const { settling, plan } = useSettling();
  const last = settling.passes.at(-1);
  const [opened, setOpened] = useState(() =>
    last !== undefined && !isFinished(last, job) ? last.entry : undefined,
  );
  const [begun, setBegun] = useState<string>();
  const open = settling.passes.find(({ entry }) => entry === opened);
  return (
    <section aria-labelledby="pass">
      <h2 id="pass">
        {open === undefined
          ? say('Pass {pass}', { pass: (last?.pass ?? 0) + 1 })
          : say('Pass {pass}', { pass: open.pass })}
      </h2>
      <div className="notice">
        {raisingCautions.map((text) => (
          <p key={text}>{say(text)}</p>
        ))}
      </div>
      {job.sections.length === 0 ? (
        <p>
          {sayNodes('A pass goes by sections, and none is described. Describe them under {place} first.', {
            place: (
              <a href={hashOf({ place: 'job', job: desk.id, task: 'record', part: 'sections' })}>
                {say('Sections')}
              </a>
            ),
          })}
        </p>
      ) : open === undefined ? (
        <>
          <PlanTable settling={settling} plan={plan} />
          <BeginPass
            settling={settling}
            onBegun={(entry) => {
              setOpened(entry);
              setBegun(entry);
            }}
          />
          {last !== undefined && (
            <button type="button" className="button" onClick={() => setOpened(last.entry)}>
              {say('Go back to pass {pass}', { pass: last.pass })}
            </button>
          )}
        </>
      ) : (
        <>
          <PassSheet
            key={open.entry}
            pass={open}
            plan={plan}
            isFresh={open.entry === begun}
            onClose={() => setOpened(undefined)}
          />
          <PlanTable settling={settling} plan={plan} />
        </>
      )}
    </section>
  );
}
