import {
  METRIC_WIRE_SIZES,
  type Message,
  message,
  type NoteAnalysis,
  noteName,
  PUBLISHED_STRENGTH_TABLES,
  type ScaleAnalysis,
  sayKnown,
  scaleFindings,
  US_WIRE_SIZES,
} from '@becket/core';
import { proposedScaleNotes } from '@becket/journal';
import {
  comparedScales,
  type Emphasis,
  emphases,
  keptRules,
  type NudgedWire,
  notesLeftOut,
  type PlanRules,
  proposeScale,
  tidiedScale,
} from '@becket/tasks';
import { useMemo, useState } from 'react';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { go } from '../../desk/use-route.ts';
import { useShop } from '../../desk/use-shop.ts';
import { Choice } from '../../parts/choice.tsx';
import { exponentText } from '../../parts/exponent-text.ts';
import { forceText } from '../../parts/force-text.ts';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { SelectField } from '../../parts/select-field.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { comparisonCharts, pairOf, summarySentences } from './compare-state.ts';
import { ComparisonChart } from './comparison-chart.tsx';
import { Beats, Changes, Loads, Wires } from './comparison-tables.tsx';
import { countOf, LeftOut } from './left-out.tsx';
import { LoadField, PartLoads, PercentField, RunField, type SetRules, WoundLimits } from './limit-fields.tsx';
import { NoStringYet } from './no-string-yet.tsx';
import { Proposals } from './proposals-list.tsx';
import {
  analysedDraft,
  type Draft,
  draftOf,
  isShown,
  nudged,
  type ProposeState,
  pinnedWords,
  proposeStateOf,
  sensitivityLines,
} from './propose-state.ts';
import { ScaleCost } from './scale-cost.tsx';
import { scaleName, stringText } from './scale-words.ts';
import { TradeOffPlot } from './trade-off-plot.tsx';
import { useFigures } from './use-analysed.ts';
import { useInferredSizes } from './use-inferred-sizes.ts';

/** Another scale than the one that was found: computed, changed by hand, and kept. */
export function ProposePlace() {
  const language = useLanguage();
  const { say } = language;
  const { desk, job, record } = useDesk();
  const state = proposeStateOf(desk.id);
  const asked = useObservable(state.rules);
  const planning = useObservable(state.planning);
  const draft = useObservable(state.draft);
  const sizes = useInferredSizes();
  const askedWires = useObservable(state.askedWires);
  const wires = askedWires ?? (sizes.is === 'there' ? sizes.sizes?.lattice : undefined) ?? asked.wires;
  const rules = useMemo(() => ({ ...asked, wires }), [asked, wires]);
  const tidied = useMemo(
    () => (sizes.is === 'there' ? tidiedScale(job, sizes.sizes, wires) : undefined),
    [job, sizes, wires],
  );
  const leftOut = useMemo(
    () =>
      tidied === undefined
        ? []
        : notesLeftOut(
            job,
            tidied.map(({ key }) => key),
            language,
          ),
    [job, tidied, language],
  );

  const begun = useMemo(
    () =>
      tidied &&
      analysedDraft(job, { from: 'as found, in whole sizes', notes: tidied }, asked.strengthTable, language)
        .analysis,
    [job, tidied, asked.strengthTable, language],
  );

  if (job.piano === undefined || record.scaleNotes.length === 0)
    return <NoStringYet title={say('Propose')} />;
  const shown =
    planning.is === 'planned' ? planning.answers.find((answer) => isShown(answer, draft)) : undefined;
  const isBusy = planning.is === 'beginning' || planning.is === 'step';
  return (
    <>
      <h2>{say('Propose')}</h2>
      <Advice />
      <LeftOut
        sentence={say(
          '{count} of {all} notes cannot be computed yet and {count, plural, one {is} other {are}} in no scale that is made here. Enter what they lack first: sizes that are chosen without them may not suit them.',
          { count: countOf(leftOut), all: record.notes.length },
        )}
        notes={leftOut}
      />
      <Rules state={state} rules={rules} begun={begun} />
      <div className="button-row plan-actions">
        <button
          type="button"
          className="button strong"
          disabled={tidied === undefined || isBusy}
          onClick={() =>
            tidied &&
            state.start(
              proposedScaleNotes(job, { name: 'tidied', notes: tidied }).notes,
              { year: job.piano?.year, wires },
              language,
            )
          }
        >
          {say('Compute scales')}
        </button>
        {isBusy && (
          <button type="button" className="button" onClick={state.stop}>
            {say('Stop')}
          </button>
        )}
        <button
          type="button"
          className="button"
          disabled={tidied === undefined}
          onClick={() => tidied && state.draft.set({ from: 'as found, in whole sizes', notes: tidied })}
        >
          {say('Start by hand from as found')}
        </button>
      </div>
      <div role="status">
        {sizes.is === 'on the way' && <p>{say('Finding the sizes that the old wire most probably had …')}</p>}
        {planning.is === 'beginning' && <p>{say('Working out what each note may have …')}</p>}
        {planning.is === 'step' && (
          <p>
            <progress max={planning.of} value={planning.done} />{' '}
            {say('{done} of {of} steps', { done: planning.done, of: planning.of })}
          </p>
        )}
        {planning.is === 'stopped' && <p>{say('Stopped. Nothing was changed.')}</p>}
      </div>
      {(planning.is === 'clash' || planning.is === 'failed') && <Problem says={planning.sentence} />}
      {planning.is === 'planned' && (
        <>
          {planning.eased.length > 0 && (
            <ul className="notice">
              {planning.eased.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          )}
          <TradeOffPlot
            answers={planning.answers}
            shown={shown}
            onChoose={(answer) => state.draft.set(draftOf(answer))}
          />
          {shown !== undefined && shown.reasonsAgainst.length > 0 && (
            <section className="notice" aria-labelledby="reasons-against">
              <h3 id="reasons-against">{say('Before you choose “{name}”', { name: shown.name })}</h3>
              <ul>
                {shown.reasonsAgainst.map((sentence) => (
                  <li key={sentence}>{sentence}</li>
                ))}
              </ul>
            </section>
          )}
        </>
      )}
      {draft !== undefined && <DraftInHand state={state} draft={draft} rules={rules} />}
      <Proposals />
    </>
  );
}

/** When to leave a scale alone, said before anything is computed. */
function Advice() {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const found = useFigures(job, 'as found');
  const beyond = useMemo(
    () =>
      scaleFindings(found.analysis, undefined, language).filter(({ weight }) => weight === 'beyond a limit')
        .length,
    [found, language],
  );
  return (
    <div className="notice">
      <p>
        {beyond === 0
          ? say(
              'Nothing of the scale as found lies beyond the shop’s limits. Leaving it alone is the first answer: it keeps the instrument as it was made, and needs no proof.',
            )
          : say(
              '{beyond, plural, one {# finding lies} other {# findings lie}} beyond the shop’s limits. Whether new sizes help with that is seen below; some of it, such as short speaking lengths, no wire mends.',
              { beyond },
            )}
      </p>
      <p className="faint">
        {say(
          'Leave a scale alone on an instrument of historic worth, where the owner wants it as its maker made it, and where a load would rise on a plate, bridge or soundboard that is in doubt: there ask a specialist first.',
        )}
      </p>
    </div>
  );
}

const emphasisWords: Readonly<Record<Emphasis, Message>> = {
  little: message('[how much it counts] little'),
  'as usual': message('[how much it counts] as usual'),
  much: message('[how much it counts] much'),
};

interface RulesProps {
  readonly state: ProposeState;
  readonly rules: PlanRules;
  /** What scales are computed from: what was found, in whole sizes, gaps filled; undefined until that is known. */
  readonly begun: ScaleAnalysis | undefined;
}

function Rules({ state, rules, begun }: RulesProps) {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const read = useFigures(job, 'as found');
  const found = begun ?? read.analysis;
  const set: SetRules = (part) => state.rules.update(part);
  const emphasis = (
    label: string,
    name: 'evenTension' | 'evenInharmonicity' | 'fewSizeChanges' | 'fewTiedStrings',
  ) => (
    <Choice<Emphasis>
      label={label}
      value={rules[name]}
      onChange={(value) => set({ [name]: value })}
      options={(Object.keys(emphases) as Emphasis[]).map((value) => ({
        value,
        words: say(emphasisWords[value]),
      }))}
    />
  );
  return (
    <details className="plan-rules">
      <summary className="button">{say('What counts, and what no scale may break')}</summary>
      <h3>{say('What counts')}</h3>
      {emphasis(say('Tension even from note to note'), 'evenTension')}
      {emphasis(say('Inharmonicity even from note to note'), 'evenInharmonicity')}
      {emphasis(say('Few changes of size'), 'fewSizeChanges')}
      {emphasis(say('Few tied strings'), 'fewTiedStrings')}
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
      <Choice<PlanRules['wires']>
        label={say('Wire to choose from')}
        value={rules.wires}
        onChange={state.askedWires.set}
        options={[
          { value: 'US', words: sayKnown(US_WIRE_SIZES.name, language) },
          { value: 'metric', words: sayKnown(METRIC_WIRE_SIZES.name, language) },
        ]}
      />
      <StockChoice rules={rules} onChange={(plainInStock_m) => set({ plainInStock_m })} />
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
      <Choice
        label={say('Wound strings')}
        value={rules.woundToo ? 'anew' : 'keep'}
        onChange={(value) => set({ woundToo: value === 'anew' })}
        options={[
          { value: 'keep', words: say('keep as found') },
          { value: 'anew', words: say('choose anew') },
        ]}
      />
      {rules.woundToo && <WoundLimits rules={rules} bridges={found.bridges} set={set} />}
      {rules.woundToo && (
        <Choice
          label={say('The break from wound to plain may move by')}
          value={String(rules.breakMayMove)}
          onChange={(value) => set({ breakMayMove: Number(value) })}
          options={['0', '1', '2', '3'].map((value) => ({
            value,
            words:
              value === '0'
                ? say('[how far] nothing')
                : say('{count, plural, one {# note} other {# notes}}', { count: Number(value) }),
          }))}
        />
      )}
    </details>
  );
}

interface DraftProps {
  readonly state: ProposeState;
  readonly draft: Draft;
  readonly rules: PlanRules;
}

function DraftInHand({ state, draft, rules }: DraftProps) {
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
    const kept = await desk.run((context, id) =>
      proposeScale(context, id, {
        name,
        notes: [...draft.notes],
        ...keptRules(rules),
        strengthTable: rules.strengthTable,
        ...(draft.saidAgainst === undefined ? {} : { saidAgainst: [...draft.saidAgainst] }),
        ...(draft.mostBetter === undefined ? {} : { mostBetter: draft.mostBetter }),
      }),
    );
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

interface NoteProps extends DraftProps {
  readonly comparison: ReturnType<typeof comparedScales>;
}

/** The note that is looked at: its wire a size up or down, and what that does at once. */
function NoteInHand({ state, draft, rules, comparison }: NoteProps) {
  const language = useLanguage();
  const { fixed, say } = language;
  const { unit } = useSettings();
  const [selected] = useSelectedKey();
  const pinned = useObservable(state.pinned);
  const both = comparison.notes.find(({ key }) => key === selected);
  const note = draft.notes.find(({ key }) => key === selected);
  const lines = useMemo(
    () =>
      both?.after === undefined ? [] : sensitivityLines(both.after.note, rules.strengthTable, unit, language),
    [both?.after, rules.strengthTable, unit, language],
  );
  if (selected === undefined || note === undefined || both?.after === undefined)
    return (
      <p className="faint">
        {say('Choose a note, on the chart or on the map, to change it.')} {pinnedWords(pinned, language)}
      </p>
    );
  const wires: readonly [NudgedWire, string][] =
    note.winding === 'plain'
      ? [['plain', say('Wire')]]
      : [
          ['core', say('Core')],
          ['winding', say('Outer winding')],
        ];
  const { before, after } = both;
  const figures = ({ tension, breakShare, inharmonicity }: NoteAnalysis) => ({
    tension: forceText(tension, unit),
    share: fixed(breakShare * 100, 0),
    b: exponentText(inharmonicity, language),
  });
  const nudge = (wire: NudgedWire, by: 1 | -1) =>
    state.draft.set(nudged(draft, selected, wire, by, rules.wires));
  return (
    <section aria-label={say('{note} in the draft', { note: noteName(selected) })} className="note-in-hand">
      <h4>{noteName(selected)}</h4>
      <p role="status">
        <strong>{stringText(after.note.string, unit, language)}</strong>
        {before !== undefined && (
          <span className="faint">
            {' '}
            {say('(as found {string})', { string: stringText(before.note.string, unit, language) })}
          </span>
        )}
        <br />
        {before === undefined
          ? say('{tension}, {share} % of the break load, B = {b}', figures(after))
          : say('{tension} ({oldTension}), {share} % of the break load ({oldShare} %), B = {b} ({oldB})', {
              ...figures(after),
              oldTension: figures(before).tension,
              oldShare: figures(before).share,
              oldB: figures(before).b,
            })}
      </p>
      {wires.map(([wire, words]) => (
        <div key={wire} className="button-row">
          <span className="nudge-words">{words}</span>
          <button type="button" className="button" onClick={() => nudge(wire, -1)}>
            {say('one size thinner')}
          </button>
          <button type="button" className="button" onClick={() => nudge(wire, 1)}>
            {say('one size thicker')}
          </button>
        </div>
      ))}
      <label className="tick">
        <input
          type="checkbox"
          checked={pinned.has(selected)}
          onChange={(event) => {
            const next = new Set(pinned);
            if (event.target.checked) next.add(selected);
            else next.delete(selected);
            state.pinned.set(next);
          }}
        />
        {say('Pin {note} as it is here', { note: noteName(selected) })}
      </label>
      <p className="faint">{pinnedWords(pinned, language)}</p>
      <TableFrame label={say('What a small slip does to {note}', { note: noteName(selected) })}>
        <table className="table">
          <caption>{say('What a small slip does to this note')}</caption>
          <thead>
            <tr>
              <th scope="col">{say('slip')}</th>
              <th scope="col" className="number">
                {say('tension')}
              </th>
              <th scope="col" className="number">
                {say('of the break load')}
              </th>
              <th scope="col" className="number">
                B
              </th>
            </tr>
          </thead>
          <tbody>
            {lines.map(({ change, tension, share, b }) => (
              <tr key={change}>
                <th scope="row">{change}</th>
                <td className="number">{tension}</td>
                <td className="number">{share}</td>
                <td className="number">{b}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
    </section>
  );
}

/** Whether plain wire is taken from every listed size or from the shop's shelf alone. */
function StockChoice({
  rules,
  onChange,
}: {
  rules: PlanRules;
  onChange: (plainInStock_m: readonly number[] | undefined) => void;
}) {
  const { say } = useLanguage();
  const { stock } = useShop();
  const onShelf = stock.lines.flatMap(({ item, free }) =>
    item.kind === 'wire' && (free ?? 0) > 0 ? [item.diameter_m] : [],
  );
  return (
    <>
      <Choice
        label={say('Plain wire')}
        value={rules.plainInStock_m === undefined ? 'listed' : 'stock'}
        onChange={(value) => onChange(value === 'stock' ? onShelf : undefined)}
        options={[
          { value: 'listed', words: say('every listed size') },
          { value: 'stock', words: say('only what the shop has') },
        ]}
      />
      {rules.plainInStock_m !== undefined && (
        <p className={rules.plainInStock_m.length === 0 ? 'question' : 'faint'}>
          {rules.plainInStock_m.length === 0
            ? say(
                '? No wire is free in the shop’s stock: count it under Order, or choose from every listed size.',
              )
            : say('{count, plural, one {# size is} other {# sizes are}} free in stock now.', {
                count: rules.plainInStock_m.length,
              })}
        </p>
      )}
    </>
  );
}
