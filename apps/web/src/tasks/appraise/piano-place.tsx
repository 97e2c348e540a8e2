import { correctOpening, describePiano } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { TextField } from '../../parts/text-field.tsx';
import { PianoFields } from '../../piano/piano-fields.tsx';
import {
  emptyPianoForm,
  formOfPiano,
  type PianoFormProblems,
  readPianoForm,
} from '../../piano/piano-form.ts';
import { ReasonHere } from './reason-here.tsx';

/** Who asks for what, and the identity of the piano. */
export function PianoPlace() {
  return (
    <>
      <JobHead />
      <Identity />
    </>
  );
}

/** Title, customer and her question, as the job was opened; put right here. */
function JobHead() {
  const { say } = useLanguage();
  const { desk, job } = useDesk();
  const [form, setForm] = useState({
    title: job.title,
    customer: job.customer ?? '',
    asks: job.asks ?? '',
  });
  const [said, setSaid] = useState('');

  async function submit(): Promise<void> {
    const [title, customer, asks] = [form.title.trim(), form.customer.trim(), form.asks.trim()];
    if (title === '') {
      setSaid(say('A job needs a title, such as the piano and its owner.'));
      return;
    }
    const done = await desk.run((context, id) => correctOpening(context, id, { title, customer, asks }));
    setSaid(done === undefined ? '' : say('The job is kept.'));
  }

  return (
    <details>
      <summary>{job.asks ?? say('The job, the customer and what is asked for')}</summary>
      <form onSubmit={once(submit)} noValidate aria-label={say('The job')}>
        <div className="fields">
          <TextField
            label={say('Title')}
            maxLength={200}
            value={form.title}
            onChange={(title) => setForm({ ...form, title })}
          />
          <TextField
            label={say('Customer')}
            maxLength={200}
            value={form.customer}
            onChange={(customer) => setForm({ ...form, customer })}
          />
        </div>
        <TextField
          label={say('What the customer asks for')}
          hint={say('in her own words; may stay empty')}
          rows={2}
          maxLength={1000}
          value={form.asks}
          onChange={(asks) => setForm({ ...form, asks })}
        />
        <div className="button-row">
          <button type="submit" className="button">
            {say('Keep the job')}
          </button>
          <output aria-live="polite">{said}</output>
        </div>
      </form>
    </details>
  );
}

function Identity() {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const [form, setForm] = useState(
    job.piano === undefined ? emptyPianoForm : formOfPiano(job.piano, language),
  );
  const [problems, setProblems] = useState<PianoFormProblems>({});
  const [said, setSaid] = useState('');
  const [reason, setReason] = useState('');

  async function submit(): Promise<void> {
    const { piano, problems: found } = readPianoForm(form, language);
    setProblems(found);
    setSaid('');
    if (piano === undefined) {
      if (form.form === 'not known yet') setSaid(say('Choose grand or vertical first.'));
      return;
    }
    const done = await desk.run((context, id) =>
      describePiano(context, id, { ...piano, ...(reason.trim() === '' ? {} : { reason: reason.trim() }) }),
    );
    if (done) setSaid(say('The description is kept.'));
  }

  return (
    <section aria-labelledby="identity">
      <h2 id="identity">{say('The piano')}</h2>
      <form onSubmit={once(submit)} noValidate>
        <PianoFields form={form} problems={problems} onChange={setForm} />
        <ReasonHere reason={reason} onChange={setReason} />
        <div className="button-row">
          <button type="submit" className="button strong">
            {say('Keep the description')}
          </button>
          <output aria-live="polite">{said}</output>
        </div>
      </form>
    </section>
  );
}
