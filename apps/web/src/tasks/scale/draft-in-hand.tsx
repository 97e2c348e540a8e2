import { comparedScales, type PlanRules, proposeScale } from '@becket/tasks';
import { useMemo, useState } from 'react';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { go } from '../../desk/use-route.ts';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { TextField } from '../../parts/text-field.tsx';
import { comparisonCharts, pairOf, summarySentences } from './compare-state.ts';
import { ComparisonChart } from './comparison-chart.tsx';
import { Beats, Changes, Loads, Wires } from './comparison-tables.tsx';
import { analysedDraft, type Draft, proposalOf } from './draft.ts';
import { NoteInHand } from './note-in-hand.tsx';
import type { ProposeState } from './propose-state.ts';
import { ScaleCost } from './scale-cost.tsx';
import { scaleName } from './scale-words.ts';
import { useFigures } from './use-analysed.ts';

interface Props {
  readonly state: ProposeState;
  readonly draft: Draft;
  readonly rules: PlanRules;
}

/** The scale that is being made: what it comes to, each note to change by hand, and a name to keep it under. */
export function DraftInHand({ state, draft, rules }: Props) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const [selected, select] = useSelectedKey();
  const found = useFigures(job, 'as found');
  const scale = useMemo(
    () => analysedDraft(job, draft, rules.strengthTable, language),
    [job, draft, rules.strengthTable, language],
  );
  const comparison = useMemo(() => comparedScales(job, found, scale), [job, found, scale]);
  const [chart, ...further] = useMemo(
    () => comparisonCharts(found, scale, unit, undefined, language),
    [found, scale, unit, language],
  );
  const [name, setName] = useState('');
  const [isOpen, setIsOpen] = useState(false);

  async function keep(): Promise<void> {
    const kept = await desk.run((context, id) => proposeScale(context, id, proposalOf(draft, name, rules)));
    if (kept === undefined) return;
    pairOf(desk.id).set({ before: 'as found', after: kept.entry });
    state.draft.set(undefined);
    go({ place: 'job', job: desk.id, task: 'scale', part: 'compare' });
  }

  return (
    <section aria-labelledby="draft">
      <h3 id="draft">{say('Draft, from “{from}”', { from: scaleName(draft.from, language) })}</h3>
      <ul className="summary">
        {summarySentences(comparison, found, scale, unit, language).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <ComparisonChart
        {...chart!}
        firstKey={job.piano!.firstKey}
        lastKey={job.piano!.lastKey}
        sections={job.sections}
        selected={selected}
        onSelect={select}
      />
      <NoteInHand state={state} draft={draft} rules={rules} comparison={comparison} />
      <ScaleCost name={draft.from} notes={draft.notes} comparison={comparison} />
      <details className="draft-more" onToggle={({ currentTarget }) => setIsOpen(currentTarget.open)}>
        <summary className="button">{say('Further curves, loads, beats and each note that changes')}</summary>
        {isOpen && (
          <>
            {further.map((one) => (
              <ComparisonChart
                key={one.name}
                {...one}
                firstKey={job.piano!.firstKey}
                lastKey={job.piano!.lastKey}
                sections={job.sections}
                selected={selected}
                onSelect={select}
              />
            ))}
            <Loads comparison={comparison} unit={unit} />
            <Beats comparison={comparison} />
            <Changes comparison={comparison} unit={unit} onSelect={select} />
            <Wires comparison={comparison} unit={unit} />
          </>
        )}
      </details>
      <form className="row-form" onSubmit={once(keep)}>
        <TextField
          label={say('Name of this proposal')}
          hint={say('As you will look for it: smoother tenor.')}
          value={name}
          maxLength={60}
          onChange={setName}
        />
        <button type="submit" className="button strong" disabled={name.trim() === ''}>
          {say('Keep this as a proposal')}
        </button>
        <button type="button" className="button quiet" onClick={() => state.draft.set(undefined)}>
          {say('Put the draft away')}
        </button>
      </form>
    </section>
  );
}
