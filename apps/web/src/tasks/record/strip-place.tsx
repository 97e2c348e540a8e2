import { type Message, message } from '@becket/core';
import { type GapRank, gapRanks, stripCheck } from '@becket/journal';
import { acceptGaps, sealRecord } from '@becket/tasks';
import { useMemo, useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { TextField } from '../../parts/text-field.tsx';
import { GapsOfRank } from './gap-list.tsx';
import { LetDownPlan } from './let-down.tsx';
import { StripDoubts } from './strip-doubts.tsx';

const rankWords: Record<GapRank, Message> = {
  'lost for ever': message('Lost for ever once the strings are off'),
  costly: message('Costly to find out later'),
  convenient: message('Convenient to have'),
};

/** The strip check: what is still missing, and the seal. */
export function StripPlace() {
  const language = useLanguage();
  const { plain, say, sayNodes } = language;
  const { desk, job } = useDesk();
  const check = useMemo(() => stripCheck(job, language), [job, language]);
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [reason, setReason] = useState('');
  const open = new Set(check.openGaps.map(({ name }) => name));
  const taken = [...chosen].filter((name) => open.has(name));

  const choose = (names: readonly string[], isChosen: boolean) => {
    const next = new Set(chosen);
    for (const name of names) {
      if (isChosen) next.add(name);
      else next.delete(name);
    }
    setChosen(next);
  };

  async function accept(): Promise<void> {
    const done = await desk.run((context, id) =>
      acceptGaps(context, id, { gaps: taken, reason: reason.trim() }),
    );
    if (done) {
      setChosen(new Set());
      setReason('');
    }
  }

  return (
    <section aria-labelledby="strip-check">
      <h2 id="strip-check">{say('Strip check')}</h2>
      <p className="notice" role="status">
        {check.isPassed
          ? sayNodes(
              '{passed} Nothing is open{gaps, plural, =0 {} other {; {count} gaps were accepted by name}}.',
              {
                passed: <strong>{`● ${say('Passed.')}`}</strong>,
                gaps: check.gaps.length,
                count: plain(check.gaps.length),
              },
            )
          : sayNodes('{notPassed} {count} {gaps, plural, one {gap is} other {gaps are}} open: {ranks}.', {
              notPassed: <strong>{`▲ ${say('Not passed.')}`}</strong>,
              count: plain(check.openGaps.length),
              gaps: check.openGaps.length,
              ranks: gapRanks
                .map((rank) => ({ rank, count: check.openGaps.filter((gap) => gap.rank === rank).length }))
                .filter(({ count }) => count > 0)
                .map(({ rank, count }) => `${count} ${say(rank)}`)
                .join(', '),
            })}
      </p>
      {open.size > 0 && (
        <p className="faint">
          {say(
            'Fill what can be had. What cannot, or need not, is ticked and accepted by name, with the reason.',
          )}
        </p>
      )}
      {job.seal === undefined && check.isPassed && (
        <>
          <p>
            {say(
              'The seal fixes the as-found record with a digest. After it every change is an amendment with a reason, and papers show it.',
            )}
          </p>
          <button
            type="button"
            className="button strong"
            onClick={once(() => desk.run((context, id) => sealRecord(context, id)))}
          >
            {say('Seal the as-found record')}
          </button>
        </>
      )}
      {job.seal !== undefined && (
        <>
          <p className="faint digest">
            {say('Seal {digest}, over {entries} entries.', {
              digest: job.seal.digest,
              entries: job.seal.entries,
            })}
          </p>
          <p>
            <a
              className="button"
              href={hashOf({ place: 'job', job: desk.id, task: 'record', part: 'papers' })}
            >
              {say('The as-found record as a paper')}
            </a>
          </p>
        </>
      )}
      <StripDoubts />
      {gapRanks.map((rank) => (
        <GapsOfRank
          key={rank}
          words={say(rankWords[rank])}
          gaps={check.gaps.filter((gap) => gap.rank === rank)}
          chosen={chosen}
          onChoose={choose}
        />
      ))}
      {taken.length > 0 && (
        <div className="accept">
          <TextField
            label={say('Reason for accepting the ticked gaps')}
            hint={say('it stands in the record, with your name')}
            value={reason}
            onChange={setReason}
          />
          <button type="button" className="button" disabled={reason.trim() === ''} onClick={once(accept)}>
            {say('Accept {count} {gaps, plural, one {gap} other {gaps}} by name', {
              count: plain(taken.length),
              gaps: taken.length,
            })}
          </button>
        </div>
      )}
      {job.seal !== undefined && (
        <p>
          <a
            className="button"
            href={hashOf({ place: 'job', job: desk.id, task: 'record', part: 'after-strip' })}
          >
            {say('Found after the strip: {count}', { count: job.damages.length })}
          </a>
        </p>
      )}
      <LetDownPlan />
    </section>
  );
}
