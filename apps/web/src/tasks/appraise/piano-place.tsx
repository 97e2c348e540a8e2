import { describePiano } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { PianoFields } from '../../piano/piano-fields.tsx';
import {
  emptyPianoForm,
  formOfPiano,
  type PianoFormProblems,
  readPianoForm,
} from '../../piano/piano-form.ts';

/** Identity of the piano. */
export function PianoPlace() {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const [form, setForm] = useState(
    job.piano === undefined ? emptyPianoForm : formOfPiano(job.piano, language),
  );
  const [problems, setProblems] = useState<PianoFormProblems>({});
  const [said, setSaid] = useState('');

  async function submit(): Promise<void> {
    const { piano, problems: found } = readPianoForm(form, language);
    setProblems(found);
    setSaid('');
    if (piano === undefined) {
      if (form.form === 'not known yet') setSaid(say('Choose grand or vertical first.'));
      return;
    }
    const done = await desk.run((context, id) => describePiano(context, id, piano));
    if (done) setSaid(say('The description is kept.'));
  }

  return (
    <section aria-labelledby="identity">
      <h2 id="identity">{say('The piano')}</h2>
      <form onSubmit={once(submit)} noValidate>
        <PianoFields form={form} problems={problems} onChange={setForm} />
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
