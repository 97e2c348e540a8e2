import { chooseScale, notesLeftOut, staleSentence, withdrawEntry } from '@becket/tasks';
import { useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { FormSheet } from '../../parts/form-sheet.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { ChosenLine } from './compare-place.tsx';
import { pairOf } from './compare-state.ts';
import { draftFromScale } from './draft.ts';
import { countOf, LeftOut } from './left-out.tsx';
import { proposeStateOf } from './propose-state.ts';

/** Every scale that may be strung, and the choice of one. */
export function Proposals() {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const [asked, setAsked] = useState<{ what: 'choose' | 'withdraw'; scale: string; name: string }>();
  const scales = [
    { entry: 'as found', name: say('as found'), stale: undefined, leftOut: [] },
    ...job.proposals.map((proposal) => ({
      entry: proposal.entry,
      name: proposal.name,
      stale: staleSentence(job, proposal, language),
      leftOut: notesLeftOut(
        job,
        proposal.notes.map(({ key }) => key),
        language,
      ),
    })),
  ];
  return (
    <section aria-labelledby="proposals">
      <h3 id="proposals">{say('Scales of this job')}</h3>
      <ChosenLine />
      <ul className="proposals">
        {scales.map(({ entry, name, stale, leftOut }) => (
          <li key={entry}>
            <strong>{name}</strong>
            {stale !== undefined && <p className="warn">▲ {stale}</p>}
            <LeftOut
              sentence={say('{count, plural, one {# note is} other {# notes are}} not in it.', {
                count: countOf(leftOut),
              })}
              notes={leftOut}
            />
            <div className="button-row">
              <button
                type="button"
                className="button"
                onClick={() => setAsked({ what: 'choose', scale: entry, name })}
              >
                {say('Choose “{name}”', { name })}
              </button>
              {entry !== 'as found' && (
                <>
                  <a
                    className="button"
                    href={hashOf({ place: 'job', job: desk.id, task: 'scale', part: 'compare' })}
                    onClick={() => pairOf(desk.id).set({ before: 'as found', after: entry })}
                  >
                    {say('Compare')}
                  </a>
                  <button
                    type="button"
                    className="button"
                    onClick={() =>
                      proposeStateOf(desk.id).draft.set(draftFromScale(job, entry, undefined, language))
                    }
                  >
                    {say('Change a copy')}
                  </button>
                  <button
                    type="button"
                    className="button quiet"
                    onClick={() => setAsked({ what: 'withdraw', scale: entry, name })}
                  >
                    {say('Withdraw')}
                  </button>
                </>
              )}
            </div>
          </li>
        ))}
      </ul>
      {asked !== undefined && <WithReason {...asked} onClose={() => setAsked(undefined)} />}
    </section>
  );
}

interface WithReasonProps {
  readonly what: 'choose' | 'withdraw';
  readonly scale: string;
  readonly name: string;
  readonly onClose: () => void;
}

function WithReason({ what, scale, name, onClose }: WithReasonProps) {
  const { say } = useLanguage();
  const { desk } = useDesk();
  const [reason, setReason] = useState('');
  const words = what === 'choose' ? say('String “{name}”', { name }) : say('Withdraw “{name}”', { name });
  async function keep(): Promise<void> {
    const done = await desk.run<unknown>((context, id) =>
      what === 'choose'
        ? chooseScale(context, id, { scale, reason })
        : withdrawEntry(context, id, scale, reason.trim()),
    );
    if (done !== undefined) onClose();
  }
  return (
    <FormSheet
      title={words}
      keep={what === 'choose' ? say('Choose it') : say('Withdraw it')}
      canKeep={reason.trim() !== ''}
      onKeep={keep}
      onClose={onClose}
    >
      <TextField
        label={say('Why')}
        hint={say('For whoever asks later.')}
        value={reason}
        rows={3}
        maxLength={500}
        onChange={setReason}
      />
    </FormSheet>
  );
}
