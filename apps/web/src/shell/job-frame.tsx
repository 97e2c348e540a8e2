import { useLanguage } from '../parts/language.tsx';
import '../piano/piano.css';
import { lazy, Suspense, useEffect, useMemo, useRef, useState } from 'react';
import { openDesk } from '../desk/job-desk.ts';
import { hashOf, type TaskName, taskNames, tasks } from '../desk/route.ts';
import { sentenceOf } from '../desk/sentence-of.ts';
import { DeskContext } from '../desk/use-desk.ts';
import { useDevice, useSettings } from '../desk/use-device.ts';
import { useMedia } from '../desk/use-media.ts';
import { go, hasMoved } from '../desk/use-route.ts';
import { useObservable, useUnhurried } from '../parts/observable.ts';
import { SafePlace } from '../parts/safe-place.tsx';
import { PhotosInHand } from '../photos/photos-in-hand.tsx';
import { CompassStrip } from '../piano/compass-strip.tsx';
import { DrawnPlan } from '../piano/drawn-plan.tsx';
import { StringCard } from '../piano/string-card.tsx';
import { ServerAway } from '../store/server-link.ts';
import { AppraisePage } from '../tasks/appraise/appraise-page.tsx';
import { HandOverPage } from '../tasks/hand-over/hand-over-page.tsx';
import { OrderPage } from '../tasks/order/order-page.tsx';
import { firstCellOf } from '../tasks/record/cell-at.ts';
import { RecordPage } from '../tasks/record/record-page.tsx';
import { SettlePage } from '../tasks/settle/settle-page.tsx';
import { StringPage } from '../tasks/string/string-page.tsx';

const ScalePage = lazy(() =>
  import('../tasks/scale/scale-page.tsx').then(({ ScalePage: page }) => ({ default: page })),
);

interface Props {
  readonly job: string;
  readonly task: TaskName;
  readonly part: string | undefined;
}

/** One job: the seven tasks as places, the plan as the map, and the task itself. */
export function JobFrame({ job: id, task, part }: Props) {
  const language = useLanguage();
  const { say } = language;
  const device = useDevice();
  const desk = useMemo(() => openDesk(id, device.store, device.context), [id, device]);
  // What was typed is read back first; the piano around it is drawn after that.
  const state = useUnhurried(desk.state);
  const problem = useObservable(desk.problem);
  const bringing = useBringing(id, state.is === 'not on this device');

  useEffect(() => desk.close, [desk]);
  const isOpen = state.is === 'open';
  useEffect(() => {
    if (!isOpen) return;
    device.exchange.watch(id);
    return () => device.exchange.watch(undefined);
  }, [device, id, isOpen]);

  useEffect(() => {
    // The link that led here is gone, and the focus with it.
    if (isOpen && hasMoved() && document.activeElement === document.body)
      document.getElementById('place')?.focus({ preventScroll: true });
  }, [isOpen]);

  const isFirst = useRef(true);
  useEffect(() => {
    if (isFirst.current) {
      isFirst.current = false;
      return;
    }
    // What went wrong elsewhere is not about this place.
    desk.problem.set(undefined);
    // Another place starts at its top; Record goes to the note that is being looked at by itself.
    const goesToNote = task === 'record' && part === undefined && desk.selectedKey.get() !== undefined;
    if (!goesToNote) scrollTo(0, 0);
    document.getElementById('place')?.focus({ preventScroll: true });
  }, [desk, task, part]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: another task or part stands elsewhere in its bar
  useEffect(() => {
    if (!isOpen) return;
    const soon = setTimeout(showWhereInBars, 100);
    return () => clearTimeout(soon);
  }, [isOpen, task, part]);

  if (state.is !== 'open') {
    return (
      <main className="page" id="place" tabIndex={-1}>
        {state.is === 'trouble' ? (
          <p role="alert" className="notice bad">
            {state.sentence}
          </p>
        ) : state.is === 'not on this device' ? (
          <p role={bringing === undefined ? undefined : 'alert'}>
            {bringing ?? say('This job is not on this device yet. Asking the server for it …')}
          </p>
        ) : (
          <p>{say('Opening the job …')}</p>
        )}
        <a href={hashOf({ place: 'jobs' })}>{say('All jobs')}</a>
      </main>
    );
  }

  const chooseNote = (key: number) => {
    desk.selectedKey.set(key);
    if (task === 'record') firstCellOf(key)?.focus();
    else if (task !== 'scale' && task !== 'appraise') go({ place: 'job', job: id, task: 'record' });
  };

  return (
    <DeskContext value={{ desk, job: state.job, record: state.record, entries: state.entries }}>
      <div className="job-frame">
        <section className="job-head" aria-label={say('Job')}>
          <h1 className="job-title">{state.job.title}</h1>
          <nav aria-label={say('Tasks of this job')} className="task-bar">
            {taskNames.map((name) => (
              <a
                key={name}
                href={hashOf({ place: 'job', job: id, task: name })}
                aria-current={name === task ? 'page' : undefined}
              >
                {say(tasks[name])}
              </a>
            ))}
          </nav>
        </section>
        <SafePlace sentenceOf={sentenceOf} resetOn={state.record}>
          <MapPane onChoose={chooseNote} isOverReadings={task === 'record' && isTypedInto(part)} />
        </SafePlace>
        <main className="task" id="place" tabIndex={-1}>
          {problem !== undefined && (
            <div role="alert" className="notice bad">
              <p>▲ {problem}</p>
              <button type="button" className="button quiet" onClick={() => desk.problem.set(undefined)}>
                {say('Put this away')}
              </button>
            </div>
          )}
          <SafePlace sentenceOf={sentenceOf} resetOn={`${task}/${part}/${state.job.entryCount}`}>
            <Suspense fallback={<p>{say('Opening …')}</p>}>
              <Task task={task} part={part} />
            </Suspense>
          </SafePlace>
        </main>
      </div>
    </DeskContext>
  );
}

function Task({ task, part }: { task: TaskName; part: string | undefined }) {
  switch (task) {
    case 'appraise':
      return <AppraisePage part={part} />;
    case 'record':
      return <RecordPage part={part} />;
    case 'scale':
      return <ScalePage part={part} />;
    case 'order':
      return <OrderPage part={part} />;
    case 'string':
      return <StringPage part={part} />;
    case 'settle':
      return <SettlePage part={part} />;
    case 'hand-over':
      return <HandOverPage />;
  }
}

/** On a phone the bars are pushed along with a thumb: the place one is at is brought into their middle. */
function showWhereInBars(): void {
  for (const here of document.querySelectorAll<HTMLElement>(
    '.task-bar [aria-current], .part-bar [aria-current]',
  )) {
    const bar = here.parentElement!;
    bar.scrollLeft = here.offsetLeft - bar.offsetLeft - (bar.clientWidth - here.offsetWidth) / 2;
  }
}

/** The parts of Record that are a sheet to type into. */
const isTypedInto = (part: string | undefined) =>
  part === undefined || part === 'readings' || part === 'strings';

function MapPane({ onChoose, isOverReadings }: { onChoose: (key: number) => void; isOverReadings: boolean }) {
  const { say } = useLanguage();
  const device = useDevice();
  const settings = useSettings();
  // As in look.css: on a wider screen the map stands beside the task.
  const isAbove = useMedia('(max-width: 1179px)');
  const setting = isAbove && isOverReadings ? 'isPlanShownAboveReadings' : 'isPlanShown';
  const isPlanShown = settings[setting];
  return (
    <aside className="map" aria-label={say('Map of the piano')}>
      <div className="map-switch">
        {!isPlanShown && <PhotosInHand />}
        <button
          type="button"
          className="button quiet"
          aria-expanded={isPlanShown}
          onClick={() => device.settings.update({ [setting]: !isPlanShown })}
        >
          {isPlanShown ? say('Hide the plan') : say('Show the plan')}
        </button>
      </div>
      {isPlanShown && <DrawnPlan onChoose={onChoose} />}
      <CompassStrip onChoose={onChoose} />
      {isPlanShown && <StringCard />}
    </aside>
  );
}

/** Asks the server for a job that is not here. Gives back why that failed, once it has. */
function useBringing(job: string, isWanted: boolean): string | undefined {
  const { exchange } = useDevice();
  const language = useLanguage();
  const { say } = language;
  const [problem, setProblem] = useState<string>();
  useEffect(() => {
    if (!isWanted) return;
    let isCurrent = true;
    exchange.bring(job).then(
      () => {
        if (isCurrent)
          setProblem(
            say(
              'Cannot open this job: neither this device nor the server has entries of it. If you scanned a paper, open Becket on the device that made it, wait until its sign says that all is sent, and load this page again. Otherwise go to the jobs and take one from there, or bring it in from its file.',
            ),
          );
      },
      (error: unknown) => {
        if (isCurrent)
          setProblem(
            error instanceof ServerAway
              ? say(
                  'Cannot open this job now: it is not on this device, and the server cannot be reached. If you scanned a paper, join the network of the shop and load this page again, or bring the job in from its file.',
                )
              : sentenceOf(error, language),
          );
      },
    );
    return () => {
      isCurrent = false;
    };
  }, [exchange, job, isWanted, say, language]);
  return problem;
}
