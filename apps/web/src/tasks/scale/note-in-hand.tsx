import { type NoteAnalysis, noteName } from '@becket/core';
import type { ScaleComparison } from '@becket/journal';
import type { NudgedWire, PlanRules } from '@becket/tasks';
import { useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { exponentText } from '../../parts/exponent-text.ts';
import { forceText } from '../../parts/force-text.ts';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { type Draft, nudged } from './draft.ts';
import { pinnedWords, withPin } from './pinned-notes.ts';
import type { ProposeState } from './propose-state.ts';
import { stringText } from './scale-words.ts';
import { SlipTable } from './slip-table.tsx';

interface Props {
  readonly state: ProposeState;
  readonly draft: Draft;
  readonly rules: PlanRules;
  readonly comparison: ScaleComparison;
}

/** The note that is looked at: its wire a size up or down, and what that does at once. */
export function NoteInHand({ state, draft, rules, comparison }: Props) {
  const language = useLanguage();
  const { fixed, say } = language;
  const { unit } = useSettings();
  const [selected] = useSelectedKey();
  const pinned = useObservable(state.pinned);
  const both = comparison.notes.find(({ key }) => key === selected);
  const note = draft.notes.find(({ key }) => key === selected);
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
          onChange={(event) => state.pinned.set(withPin(pinned, selected, event.target.checked))}
        />
        {say('Pin {note} as it is here', { note: noteName(selected) })}
      </label>
      <p className="faint">{pinnedWords(pinned, language)}</p>
      <SlipTable note={after.note} strengthTable={rules.strengthTable} />
    </section>
  );
}
