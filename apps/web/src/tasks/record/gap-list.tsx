import { noteName } from '@becket/core';
import type { Gap } from '@becket/journal';
import { withdrawEntry } from '@becket/tasks';
import { useId } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { focusWhenThere } from '../../parts/focus-when-there.ts';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { type GapGroup, gapGroups, placesOf } from './gap-groups.ts';
import { wayOfGap } from './gap-way.ts';
import { recordViewOf } from './record-state.ts';

/** More of one kind than these are folded: a piano of which nothing is read lacks some three hundred things. */
const unfolded = 6;

interface Chosen {
  readonly chosen: ReadonlySet<string>;
  readonly onChoose: (names: readonly string[], isChosen: boolean) => void;
}

/** The gaps of one rank: what is open by kind, and then what was accepted. */
export function GapsOfRank({
  words,
  gaps,
  chosen,
  onChoose,
}: Chosen & { readonly words: string; readonly gaps: readonly Gap[] }) {
  const { say } = useLanguage();
  if (gaps.length === 0) return null;
  const open = gaps.filter(({ accepted }) => accepted === undefined);
  const accepted = gaps.filter((gap) => gap.accepted !== undefined);
  return (
    <section aria-label={words}>
      <h3>{say('{rank}: {count} open', { rank: words, count: open.length })}</h3>
      {open.length > 1 && (
        <Tick names={open.map(({ name }) => name)} chosen={chosen} onChoose={onChoose}>
          {say('tick all {count}', { count: open.length })}
        </Tick>
      )}
      <ul className="gaps">
        {gapGroups(open).map((group) =>
          group.gaps.length === 1 ? (
            <li key={group.kind}>
              <Tick names={[group.gaps[0]!.name]} chosen={chosen} onChoose={onChoose}>
                {group.gaps[0]!.sentence}
              </Tick>
              <GoThere gap={group.gaps[0]!} />
            </li>
          ) : (
            <Group key={group.kind} group={group} chosen={chosen} onChoose={onChoose} />
          ),
        )}
      </ul>
      {accepted.length > 0 && (
        <details>
          <summary>{say('Accepted by name: {count}', { count: accepted.length })}</summary>
          <ul className="gaps">
            {accepted.map((gap) => (
              <Accepted key={gap.name} gap={gap} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

/** The same thing missing at several places: said once, each place a line, many of them folded. */
function Group({ group: { what, cost, gaps }, chosen, onChoose }: Chosen & { readonly group: GapGroup }) {
  const language = useLanguage();
  const { say } = language;
  const id = useId();
  const isFolded = gaps.length > unfolded;
  const places = (
    <ul aria-labelledby={id}>
      {gaps.map((gap) => (
        <li key={gap.name}>
          <Tick names={[gap.name]} chosen={chosen} onChoose={onChoose}>
            {gap.place.key === undefined ? (gap.place.section ?? gap.what) : noteName(gap.place.key)}
            {gap.found !== undefined && <span className="faint"> ({gap.found})</span>}
          </Tick>
          <GoThere gap={gap} />
        </li>
      ))}
    </ul>
  );
  return (
    <li className="gap-group">
      <div className="gap-group-head">
        <Tick names={gaps.map(({ name }) => name)} chosen={chosen} onChoose={onChoose}>
          <span id={id}>
            <strong>{say('{rank}: {count} open', { rank: what, count: gaps.length })}</strong>
          </span>
        </Tick>
        {isFolded && <GoThere gap={gaps[0]!} isNamed />}
      </div>
      {cost !== undefined && <p className="faint">{say('Later: {cost}', { cost })}</p>}
      {isFolded ? (
        <details>
          <summary>{placesOf(gaps, language)}</summary>
          {places}
        </details>
      ) : (
        places
      )}
    </li>
  );
}

/** A tick for some gaps: half where only a part of them is ticked. */
function Tick({
  names,
  chosen,
  onChoose,
  children,
}: Chosen & { readonly names: readonly string[]; readonly children: React.ReactNode }) {
  const count = names.filter((name) => chosen.has(name)).length;
  return (
    <label className="tick gap-open">
      <input
        type="checkbox"
        checked={count === names.length}
        ref={(box) => {
          if (box !== null) box.indeterminate = count > 0 && count < names.length;
        }}
        onChange={(event) => onChoose(names, event.target.checked)}
      />
      <span>{children}</span>
    </label>
  );
}

/** To the cell, the thing or the form that fills the gap. */
function GoThere({ gap, isNamed = false }: { readonly gap: Gap; readonly isNamed?: boolean }) {
  const { say } = useLanguage();
  const { desk, job } = useDesk();
  const { task, part, view, key, focus } = wayOfGap(gap, job);
  const { name, place } = gap;
  const address = hashOf({ place: 'job', job: desk.id, task, ...(part === undefined ? {} : { part }) });
  return (
    <a
      className="button quiet"
      aria-label={say('Go to {name}', { name })}
      href={address}
      onClick={() => {
        if (key !== undefined) desk.selectedKey.set(key);
        if (view !== undefined) recordViewOf(desk.id).update(view);
        if (focus !== undefined) void focusWhenThere(focus, address);
      }}
    >
      {isNamed && place.key !== undefined
        ? say('Go to {note}', { note: noteName(place.key) })
        : say('Go there')}
    </a>
  );
}

function Accepted({ gap: { name, sentence, accepted } }: { readonly gap: Gap }) {
  const { say } = useLanguage();
  const { desk, job } = useDesk();
  if (accepted === undefined) return null;
  return (
    <li>
      <p className="faint gap-open">
        {`✓ ${sentence} ${say('Accepted by {by}: {reason}.', { by: accepted.by, reason: accepted.reason })}`}
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
    </li>
  );
}
