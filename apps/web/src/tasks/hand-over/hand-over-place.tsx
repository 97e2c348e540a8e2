import './hand-over.css';
import type { Metres } from '@becket/core';
import {
  foldHandOver,
  foldSettling,
  foldStringing,
  type HandOver,
  type StrungScale,
  strungDeviations,
  strungScale,
} from '@becket/journal';
import { deviationInWords, type OpenThing, stillOpen, wantedWires, withdrawEntry } from '@becket/tasks';
import { useEffect, useMemo, useState } from 'react';
import { hashOf, type TaskName, tasks } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { todayHere } from '../../parts/day-field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { inferSizesAway } from '../../worker/sizes-away.ts';
import { HandOverForm } from './hand-over-form.tsx';
import { StrungReadings } from './strung-readings.tsx';

/** Where what is open can be settled. */
const settledUnder: Readonly<Record<OpenThing['about'], { task: TaskName; part?: string }>> = {
  record: { task: 'record', part: 'strip' },
  stringing: { task: 'record', part: 'sections' },
  scale: { task: 'scale', part: 'compare' },
  wire: { task: 'hand-over' },
  torque: { task: 'appraise', part: 'torque' },
  bearing: { task: 'hand-over' },
  pitch: { task: 'settle' },
  'follow-up': { task: 'settle', part: 'follow-ups' },
  'change order': { task: 'appraise', part: 'estimate' },
};

/** What is still open, and the hand-over: to be made, or as it was made. */
export function HandOverPlace() {
  const { job, entries } = useDesk();
  const language = useLanguage();
  const { say } = language;
  const made = useMemo(() => foldHandOver(entries), [entries]);
  const scale = useMemo(() => strungScale(job), [job]);
  const open = useMemo(
    () =>
      stillOpen(
        job,
        { stringing: foldStringing(entries), settling: foldSettling(entries), scale, today: todayHere() },
        language,
      ),
    [job, entries, scale, language],
  );
  const deviations = useDeviations(scale);
  return (
    <section aria-labelledby="hand-over" className="hand-over">
      <h2 id="hand-over">{say('Hand over')}</h2>
      {made === undefined ? (
        <>
          <StillOpen open={open} />
          <StrungReadings />
          <HandOverForm openThings={open.length} deviations={deviations} />
        </>
      ) : (
        <Made made={made} />
      )}
    </section>
  );
}

/** Where the new wire is not what was chosen. The sizes of the old wire are worked out away from the screen first. */
function useDeviations(scale: StrungScale): readonly string[] {
  const { job } = useDesk();
  const language = useLanguage();
  const [wanted, setWanted] = useState<ReadonlyMap<number, Metres>>(new Map());
  const isCompared = scale.chosen !== undefined && scale.notes.some(({ from }) => from === 'measured');
  useEffect(
    () =>
      isCompared
        ? inferSizesAway(
            job,
            undefined,
            (sizes) => setWanted(wantedWires(job, sizes ?? { notes: [] })),
            language,
          )
        : undefined,
    [job, isCompared, language],
  );
  return useMemo(
    () => strungDeviations(job, scale, wanted).map((one) => deviationInWords(one, language)),
    [job, scale, wanted, language],
  );
}

function StillOpen({ open }: { open: readonly OpenThing[] }) {
  const { desk } = useDesk();
  const { say } = useLanguage();
  return (
    <section aria-labelledby="still-open">
      <h3 id="still-open">{say('Still open')}</h3>
      {open.length === 0 ? (
        <p>● {say('Nothing that the record asks for is open.')}</p>
      ) : (
        <ul className="open-things">
          {open.map(({ about, sentence }) => {
            const place = settledUnder[about];
            return (
              <li key={sentence}>
                <span>○ {sentence}</span>
                {place.task === 'hand-over' ? (
                  <span className="faint">{say('measured below')}</span>
                ) : (
                  <a className="button quiet" href={hashOf({ place: 'job', job: desk.id, ...place })}>
                    {say('Go to {task}', { task: say(tasks[place.task]) })}
                  </a>
                )}
              </li>
            );
          })}
        </ul>
      )}
    </section>
  );
}

/** The hand-over that stands, as it was said. */
function Made({ made }: { made: HandOver }) {
  const { desk } = useDesk();
  const { say, day } = useLanguage();
  const list = (title: string, items: readonly string[], none: string) => (
    <>
      <h3>{title}</h3>
      {items.length === 0 ? (
        <p>{none}</p>
      ) : (
        <ul>
          {items.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ul>
      )}
    </>
  );
  const { aftercare } = made;
  return (
    <>
      <p className="lead" role="status">
        ●{' '}
        {say('Handed over on {day} to {name}; {signed} answers for it.', {
          day: day(made.on),
          name: made.to,
          signed: made.signedBy,
        })}
      </p>
      {list(say('[to the owner] Cautions'), made.cautions, say('No caution was given.'))}
      <h3>{say('Care')}</h3>
      <p>
        {aftercare.climate ?? say('Nothing was said of the air.')}{' '}
        {aftercare.tuneOn.length === 0
          ? say('No day to tune was named.')
          : say('To be tuned on {days}.', { days: aftercare.tuneOn.map(day).join('; ') })}{' '}
        {aftercare.further}
      </p>
      {list(
        say('Left alone'),
        made.leftAlone.map(({ what, because }) => `${what}: ${because}`),
        say('Nothing was named.'),
      )}
      {list(
        say('Deviations from the chosen scale'),
        made.deviations.map(({ what, because }) =>
          because === undefined ? `${what} ${say('No reason was given.')}` : `${what} ${because}`,
        ),
        say('None was found, or nothing could be compared.'),
      )}
      {list(say('Open on that day'), made.stillOpen, say('Nothing that the record asks for is open.'))}
      <button
        type="button"
        className="button quiet"
        onClick={once(() =>
          desk.run((context, id) => withdrawEntry(context, id, made.entry, say('taken back'))),
        )}
      >
        {say('Take the hand-over back')}
      </button>
    </>
  );
}
