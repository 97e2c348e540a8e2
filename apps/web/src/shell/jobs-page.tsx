import { listJobs, openJob } from '@becket/tasks';
import { useEffect, useState } from 'react';
import { hashOf } from '../desk/route.ts';
import { sentenceOf } from '../desk/sentence-of.ts';
import { useDevice, useSettings } from '../desk/use-device.ts';
import { go } from '../desk/use-route.ts';
import { Field } from '../parts/field.tsx';
import { useLanguage } from '../parts/language.tsx';
import { latestOnly } from '../parts/latest-only.ts';
import { useObservable } from '../parts/observable.ts';
import { once } from '../parts/once.ts';
import { TextField } from '../parts/text-field.tsx';
import { PianoFields } from '../piano/piano-fields.tsx';
import { emptyPianoForm, type PianoFormProblems, readPianoForm } from '../piano/piano-form.ts';
import { bringInJobFile } from './bring-in-job.ts';
import { type JobLine, jobLines } from './job-list.ts';

/** The start place: every job, and the ways to begin one. */
export function JobsPage() {
  const language = useLanguage();
  const { say } = language;
  const device = useDevice();
  const { serverJobs, server } = useObservable(device.exchange.state);
  const [here, setHere] = useState<Awaited<ReturnType<typeof listJobs>>>();
  const [problem, setProblem] = useState<string>();

  useEffect(() => {
    const take = latestOnly(setHere);
    const read = () =>
      void take(listJobs(device.context())).catch((error: unknown) =>
        setProblem(sentenceOf(error, language)),
      );
    read();
    return device.store.onArrival(read);
  }, [device, language]);

  async function attempt(begin: () => Promise<string>): Promise<void> {
    try {
      setProblem(undefined);
      go({ place: 'job', job: await begin(), task: 'record' });
    } catch (error) {
      setProblem(sentenceOf(error, language));
    }
  }

  async function openDemo(): Promise<string> {
    const demo = await import('./open-demo.ts');
    return demo.openDemo(device.context());
  }

  async function bringIn(file: File): Promise<void> {
    try {
      setProblem(undefined);
      const { job, notice } = await bringInJobFile(device, file);
      // With something to read first we stay here; the job stands in the list above.
      if (notice === undefined) go({ place: 'job', job, task: 'record' });
      else setProblem(notice);
    } catch (error) {
      setProblem(sentenceOf(error, language));
    }
  }

  const lines = here === undefined ? undefined : jobLines(here, serverJobs);
  return (
    <main className="page" id="place" tabIndex={-1}>
      <h1>{say('Jobs')}</h1>
      <p className="lead">
        {say(
          'The working record of a piano that is being restrung. What you enter is kept on this device at once, with or without a network.',
        )}
      </p>
      {problem !== undefined && (
        <p role="alert" className="notice bad">
          {problem}
        </p>
      )}
      <WhoAreYou />
      {lines === undefined ? (
        <p>{say('Reading this device …')}</p>
      ) : lines.length === 0 ? (
        <p>
          {server === 'away'
            ? say('No job is on this device yet, and the server cannot be reached.')
            : say('No job is on this device yet.')}
        </p>
      ) : (
        <ul className="job-list" aria-label={say('Jobs')}>
          {lines.map((line) => (
            <li key={line.job}>
              <JobCard line={line} />
            </li>
          ))}
        </ul>
      )}
      <div className="columns">
        <NewJob onOpen={attempt} />
        <section aria-labelledby="other-ways">
          <h2 id="other-ways">{say('Other ways to begin')}</h2>
          <p>
            {say('Look around in an invented grand of 1.8 m, with messy readings, gaps and two wrong ones.')}
          </p>
          <button type="button" className="button" onClick={once(() => attempt(openDemo))}>
            {say('Open the demo job')}
          </button>
          <p>
            {say(
              'Bring in a job that was saved as a file on another device; what is here already stays as it is.',
            )}
          </p>
          <label className="button">
            {say('Bring in a job file')}
            <input
              type="file"
              className="unseen"
              accept=".zip,.jsonl,.ndjson,.txt"
              onChange={(event) => {
                const file = event.target.files?.[0];
                if (file) void bringIn(file);
                event.target.value = '';
              }}
            />
          </label>
        </section>
      </div>
    </main>
  );
}

function JobCard({ line }: { line: JobLine }) {
  const language = useLanguage();
  const { localDay, say } = language;
  const { unsentByJob } = useObservable(useDevice().exchange.state);
  const unsent = unsentByJob.get(line.job) ?? 0;
  const where = line.isHere
    ? unsent > 0
      ? say('▲ {count, plural, one {# entry} other {# entries}} only on this device', { count: unsent })
      : say('on this device and on the server')
    : say('on the server; opening it brings it to this device');
  return (
    <a className="job-card" href={hashOf({ place: 'job', job: line.job, task: 'record' })}>
      <strong>{line.title}</strong>
      <span>
        {[
          line.customer,
          line.isSealed ? say('as-found record sealed') : undefined,
          say('{entries, plural, one {# entry} other {# entries}}, last on {day}', {
            entries: line.entries,
            day: localDay(line.lastAt),
          }),
        ]
          .filter(Boolean)
          .join(' · ')}
      </span>
      <span className="faint">{where}</span>
    </a>
  );
}

/** Asks once for the name that stands on entries. */
function WhoAreYou() {
  const { say } = useLanguage();
  const device = useDevice();
  const { name } = useSettings();
  const [typed, setTyped] = useState('');
  if (name.trim() !== '') return null;
  return (
    <form
      className="notice row-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (typed.trim() !== '') device.settings.update({ name: typed.trim().slice(0, 120) });
      }}
    >
      <Field label={say('Your name, as it stands on every entry you make')}>
        {(ids) => (
          <input
            {...ids}
            className="input"
            value={typed}
            autoComplete="name"
            onChange={(event) => setTyped(event.target.value)}
          />
        )}
      </Field>
      <button type="submit" className="button">
        {say('Keep the name')}
      </button>
    </form>
  );
}

function NewJob({ onOpen }: { onOpen: (begin: () => Promise<string>) => Promise<void> }) {
  const language = useLanguage();
  const { say } = language;
  const device = useDevice();
  const [title, setTitle] = useState('');
  const [customer, setCustomer] = useState('');
  const [asks, setAsks] = useState('');
  const [form, setForm] = useState(emptyPianoForm);
  const [problems, setProblems] = useState<PianoFormProblems & { title?: string }>({});

  async function submit(): Promise<void> {
    const read = readPianoForm(form, language);
    const titleProblem =
      title.trim() === '' ? { title: say('A job needs a title, such as the piano and its owner.') } : {};
    const found = { ...read.problems, ...titleProblem };
    setProblems(found);
    if (Object.keys(found).length > 0) return;
    await onOpen(async () => {
      const job = await openJob(device.context(), {
        title: title.trim(),
        customer: customer.trim() || undefined,
        asks: asks.trim() || undefined,
        piano: read.piano,
      });
      return job.id;
    });
  }

  return (
    <section aria-labelledby="new-job">
      <h2 id="new-job">{say('New job')}</h2>
      <form onSubmit={once(submit)} noValidate>
        <TextField
          label={say('Title')}
          problem={problems.title}
          maxLength={200}
          value={title}
          onChange={setTitle}
        />
        <TextField
          label={say('Customer')}
          hint={say('may stay empty')}
          maxLength={200}
          value={customer}
          onChange={setCustomer}
        />
        <TextField
          label={say('What the customer asks for')}
          hint={say('in her own words; may stay empty')}
          rows={2}
          maxLength={1000}
          value={asks}
          onChange={setAsks}
        />
        <PianoFields form={form} problems={problems} onChange={setForm} isShort />
        <button type="submit" className="button strong">
          {say('Open the job')}
        </button>
      </form>
    </section>
  );
}
