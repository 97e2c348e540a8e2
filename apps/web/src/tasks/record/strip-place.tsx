import { type Message, message } from '@becket/core';
import { type Gap, type GapRank, gapRanks, stripCheck } from '@becket/journal';
import { acceptGaps, sealRecord, withdrawEntry } from '@becket/tasks';
import { useMemo, useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { TextField } from '../../parts/text-field.tsx';
import { LetDownPlan } from './let-down.tsx';
import { recordViewOf } from './record-state.ts';
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
      {open.size > 0 && (
        <div className="accept">
          <TextField
            label={say('Reason for accepting the ticked gaps')}
            hint={say('it stands in the record, with your name')}
            value={reason}
            onChange={setReason}
          />
          <button
            type="button"
            className="button"
            disabled={taken.length === 0 || reason.trim() === ''}
            onClick={once(accept)}
          >
            {taken.length === 0
              ? say('Accept the ticked gaps')
              : say('Accept {count} {gaps, plural, one {gap} other {gaps}} by name', {
                  count: plain(taken.length),
                  gaps: taken.length,
                })}
          </button>
        </div>
      )}
      <StripDoubts />
      {gapRanks.map((rank) => (
        <Rank
          key={rank}
          rank={rank}
          gaps={check.gaps.filter((gap) => gap.rank === rank)}
          chosen={chosen}
          onChoose={choose}
        />
      ))}
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

interface RankProps {
  readonly rank: GapRank;
  readonly gaps: readonly Gap[];
  readonly chosen: ReadonlySet<string>;
  readonly onChoose: (names: readonly string[], isChosen: boolean) => void;
}

function Rank({ rank, gaps, chosen, onChoose }: RankProps) {
  const { say } = useLanguage();
  const { desk, job } = useDesk();
  const [, select] = useSelectedKey();
  if (gaps.length === 0) return null;
  const openNames = gaps.filter(({ accepted }) => accepted === undefined).map(({ name }) => name);
  const areAllChosen = openNames.length > 0 && openNames.every((name) => chosen.has(name));
  return (
    <section aria-label={say(rankWords[rank])}>
      <h3>{say('{rank}: {count} open', { rank: say(rankWords[rank]), count: openNames.length })}</h3>
      {openNames.length > 1 && (
        <label className="tick">
          <input
            type="checkbox"
            checked={areAllChosen}
            onChange={(event) => onChoose(openNames, event.target.checked)}
          />
          {say('tick all {count}', { count: openNames.length })}
        </label>
      )}
      <ul className="gaps">
        {gaps.map(({ name, sentence, accepted, place }) => (
          <li key={name}>
            {accepted === undefined ? (
              <label className="tick gap-open">
                <input
                  type="checkbox"
                  checked={chosen.has(name)}
                  onChange={(event) => onChoose([name], event.target.checked)}
                />
                <span>{sentence}</span>
              </label>
            ) : (
              <div className="gap-open">
                <p className="faint">
                  {`✓ ${sentence} ${say('Accepted by {by}: {reason}.', {
                    by: accepted.by,
                    reason: accepted.reason,
                  })}`}
                </p>
                {job.seal === undefined && (
                  <button
                    type="button"
                    className="button quiet"
                    aria-label={say('Take back the acceptance of {name}', { name })}
                    onClick={once(() =>
                      desk.run((context, id) =>
                        withdrawEntry(context, id, accepted.entry, say('the acceptance was taken back')),
                      ),
                    )}
                  >
                    {say('Take back')}
                  </button>
                )}
              </div>
            )}
            <a
              className="button quiet"
              aria-label={say('Go to {name}', { name })}
              href={hashOf({
                place: 'job',
                job: desk.id,
                ...(name.startsWith('pitch-offset/')
                  ? { task: 'appraise', part: 'air' }
                  : {
                      task: 'record',
                      ...(place.key === undefined ? { part: partOfGap(name, place.section) } : {}),
                    }),
              })}
              onClick={() => {
                if (place.key !== undefined) select(place.key);
                else if (place.section !== undefined)
                  recordViewOf(desk.id).update({ section: place.section });
              }}
            >
              {say('Go there')}
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The part of Record where a gap of a section, or of the whole piano, is closed. */
function partOfGap(name: string, section: string | undefined): string {
  if (name.startsWith('soundboard-crown/')) return 'seen';
  if (section === undefined) return 'sections';
  if (name.startsWith('loops/') || name.startsWith('hitch-pins/')) return 'loops';
  if (name.startsWith('stamps/')) return 'sizes';
  return /^(pin-diameter|front-length|back-length|loop-to-winding|winding-length)\//.test(name)
    ? 'strings'
    : 'seen';
}
