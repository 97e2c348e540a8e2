import { PUBLISHED_STRENGTH_TABLES, type ScaleAnalysis, sayKnown } from '@becket/core';
import type { PlanRules } from '@becket/tasks';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { SelectField } from '../../parts/select-field.tsx';
import { LoadField, PercentField, RunField, type SetRules } from './limit-fields.tsx';
import { PartLoads } from './part-loads.tsx';
import type { ProposeState } from './propose-state.ts';
import { useFigures } from './use-analysed.ts';
import { WhatCounts } from './what-counts.tsx';
import { WireChoice } from './wire-choice.tsx';
import { WoundRules } from './wound-rules.tsx';

interface Props {
  readonly state: ProposeState;
  readonly rules: PlanRules;
  /** What scales are computed from: what was found, in whole sizes, gaps filled; undefined until that is known. */
  readonly begun: ScaleAnalysis | undefined;
}

/** What a scale is planned by, folded away: the shop asks for little else than the usual. */
export function RulesToPlanBy({ state, rules, begun }: Props) {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const read = useFigures(job, 'as found');
  const found = begun ?? read.analysis;
  const set: SetRules = (part) => state.rules.update(part);
  return (
    <details className="plan-rules">
      <summary className="button">{say('What counts, and what no scale may break')}</summary>
      <WhatCounts rules={rules} set={set} />
      <h3>{say('Limits')}</h3>
      <p className="faint">
        {say(
          'They start from common practice, are the shop’s own, and are not physics. Break loads are by the table chosen here; real wire usually tests stronger.',
        )}
      </p>
      <div className="fields">
        <SelectField
          label={say('Break load by')}
          value={rules.strengthTable}
          onChange={(strengthTable) => set({ strengthTable })}
          options={PUBLISHED_STRENGTH_TABLES.map(({ name }) => ({
            value: name,
            words: sayKnown(name, language),
          }))}
        />
        <PercentField
          label={say('Highest share of the break load (%)')}
          value={rules.highestBreakShare}
          onChange={(highestBreakShare) => set({ highestBreakShare })}
        />
        <PercentField
          label={say('Lowest share, plain strings (%)')}
          value={rules.lowestBreakSharePlain}
          onChange={(lowestBreakSharePlain) => set({ lowestBreakSharePlain })}
        />
        <PercentField
          label={say('Lowest share, wound strings (%)')}
          value={rules.lowestBreakShareWound}
          onChange={(lowestBreakShareWound) => set({ lowestBreakShareWound })}
        />
        <PercentField
          label={say('Tension may leave as found by (%)')}
          value={rules.tensionRange}
          onChange={(tensionRange) => set({ tensionRange })}
        />
        <RunField
          label={say('A size serves at least')}
          value={rules.minimumRun}
          onChange={(minimumRun) => set({ minimumRun })}
        />
        <LoadField
          label={say('Highest load of all strings (kN)')}
          value={rules.highestLoad_n}
          found={found.total}
          onChange={(highestLoad_n) => set({ highestLoad_n })}
        />
      </div>
      <PartLoads rules={rules} analysis={found} set={set} />
      <WireChoice rules={rules} onNumbering={state.askedWires.set} set={set} />
      <Choice
        label={say('Is this instrument of historic worth?')}
        value={rules.isHistoric === undefined ? 'unsaid' : rules.isHistoric ? 'yes' : 'no'}
        onChange={(value) => set({ isHistoric: value === 'unsaid' ? undefined : value === 'yes' })}
        options={[
          { value: 'unsaid', words: say('by its year') },
          { value: 'yes', words: say('yes') },
          { value: 'no', words: say('no') },
        ]}
      />
      <WoundRules rules={rules} bridges={found.bridges} set={set} />
    </details>
  );
}
