import { noteName } from '@becket/core';
import { type ProposedNote, proposedScaleNotes, scaleNotesOf, type WhichScale } from '@becket/journal';
import {
  COMMON_CUT_ALLOWANCES,
  loopsAndCuts,
  type SectionLoops,
  tidiedScale,
  type WireToCut,
} from '@becket/tasks';
import { useMemo } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { go } from '../../desk/use-route.ts';
import { type LengthUnit, lengthNumber, lengthText } from '../../parts/length-text.ts';
import { useObservable } from '../../parts/observable.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { pairOf, scaleChoices, standingPair } from './compare-state.ts';
import { baseline, drawnSection } from './loop-drawing.ts';
import { LoopsPlan } from './loops-plan.tsx';
import { draftFromScale, proposeStateOf } from './propose-state.ts';
import { counted, wireText } from './scale-words.ts';
import { useInferredSizes } from './use-inferred-sizes.ts';

/** Which plain strings share a wire in one scale, and how long each wire is cut. */
export function LoopsPlace() {
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const pair = pairOf(desk.id);
  const { after: which } = standingPair(job, useObservable(pair));
  const sizes = useInferredSizes();
  // Worn wire reads a little differently from note to note: what was found is taken in the sizes it most probably had.
  const tidied = useMemo(
    () => (which === 'as found' && sizes.is === 'there' ? tidiedScale(job, sizes.sizes) : undefined),
    [job, which, sizes],
  );
  const sections = useMemo(
    () =>
      loopsAndCuts(
        job,
        tidied === undefined
          ? scaleNotesOf(job, which)
          : proposedScaleNotes(job, { name: 'as found, in whole sizes', notes: tidied }),
      ),
    [job, which, tidied],
  );
  const tied = sections.reduce((sum, { plan }) => sum + plan.tied, 0);
  const wires = sections.reduce((sum, section) => sum + section.wires.length, 0);
  return (
    <>
      <h2>Loops and cuts</h2>
      <SelectField<WhichScale>
        label="Scale"
        value={which}
        onChange={(value) => pair.update({ after: value })}
        options={scaleChoices(job)}
      />
      {sections.length === 0 ? (
        <p>No plain string can be computed yet: enter sections, wires and speaking lengths in Record.</p>
      ) : (
        <>
          <p>
            {counted(wires, 'plain wire', 'plain wires')}, of which <strong>{tied} tied</strong>: the fewest
            with these sizes, as a loop joins two neighbours of one size within a section.
          </p>
          {which === 'as found' && (
            <p className="faint">
              {tidied === undefined
                ? 'As the worn wire was read, until the sizes it most probably had are worked out …'
                : 'What was found, in the sizes that its wire most probably had.'}
            </p>
          )}
          <p className="faint">
            Cut length = front + speaking + back lengths, {COMMON_CUT_ALLOWANCES.coils} coils and becket on
            each pin, half a turn round the hitch pin or{' '}
            {lengthText(COMMON_CUT_ALLOWANCES.tie_m, unit, 'length')} for a tied loop, and{' '}
            {lengthText(COMMON_CUT_ALLOWANCES.waste_m, unit, 'length')} waste at each pin (common practice).
            Cut the first wire of a size, string it, and correct before cutting the rest. Cut ends spring:
            hold both sides and wear glasses.
          </p>
          <LoopsPlan sections={sections} unit={unit} />
          {sections.map((section) => (
            <Section
              key={section.section}
              {...section}
              unit={unit}
              onShift={(change) => {
                proposeStateOf(desk.id).draft.set(
                  tidied === undefined
                    ? draftFromScale(job, which, change)
                    : {
                        from: 'as found, in whole sizes',
                        notes: withGauge(tidied, change),
                      },
                );
                go({ place: 'job', job: desk.id, task: 'scale', part: 'propose' });
              }}
            />
          ))}
        </>
      )}
    </>
  );
}

/** The same notes, one of them on another plain size. */
const withGauge = (
  notes: readonly ProposedNote[],
  { key, diameter }: { readonly key: number; readonly diameter: number },
): ProposedNote[] =>
  notes.map((note) =>
    note.key === key && note.winding === 'plain' ? { ...note, gauge_m: diameter, from: 'by hand' } : note,
  );

interface SectionProps extends SectionLoops {
  readonly unit: LengthUnit;
  readonly onShift: (change: { readonly key: number; readonly diameter: number }) => void;
}

function Section({ unit, onShift, ...loops }: SectionProps) {
  const { section, plan, wires, shifts } = loops;
  const drawn = drawnSection(loops);
  const words = `${section}: ${counted(wires.length, 'wire', 'wires')}, ${plan.tied} tied`;
  return (
    <section aria-label={words}>
      <h3>{words}</h3>
      <TableFrame label={`Loops of ${section}, drawn`}>
        <svg width={drawn.width} height={100} role="img" aria-label={words} className="loop-drawing">
          {drawn.changes.map(({ x, diameter_m }) => (
            <g key={x}>
              <line className="loop-change" x1={x} x2={x} y1={6} y2={94} />
              <text x={x + 4} y={18}>
                {lengthNumber(diameter_m, unit, 'diameter')}
              </text>
            </g>
          ))}
          {drawn.strings.map(({ x, isFirstOfNote, key }) => (
            <g key={x}>
              <line className="loop-string-line" x1={x} x2={x} y1={44} y2={baseline} />
              {isFirstOfNote && (key - 4) % 3 === 0 && (
                <text x={x} y={38}>
                  {noteName(key)}
                </text>
              )}
            </g>
          ))}
          {drawn.wires.map(({ path, joined, isOther }) => (
            <path key={path} d={path} className={`loop-wire ${joined}${isOther ? ' other' : ''}`} />
          ))}
        </svg>
      </TableFrame>
      {shifts.length > 0 && (
        <>
          <p>A change that moves by one note saves a tied string:</p>
          <ul>
            {shifts.map(({ sentence, key, diameter }) => (
              <li key={sentence}>
                {sentence}{' '}
                <button type="button" className="button quiet" onClick={() => onShift({ key, diameter })}>
                  Take it into a draft
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      <details>
        <summary className="button quiet">Cut list of {section}</summary>
        <CutList wires={wires} unit={unit} label={`Cut list of ${section}`} />
      </details>
    </section>
  );
}

interface CutListProps {
  readonly wires: readonly WireToCut[];
  readonly unit: LengthUnit;
  readonly label: string;
}

function CutList({ wires, unit, label }: CutListProps) {
  const part = (length: number | undefined) =>
    length === undefined ? '–' : lengthNumber(length, unit, 'length');
  return (
    <TableFrame label={label}>
      <table className="table cut-list">
        <caption>Lengths in {unit}</caption>
        <thead>
          <tr>
            <th scope="col">strings</th>
            <th scope="col">wire</th>
            {['cut', 'front', 'speaking', 'back', 'coils', 'beckets', 'hitch or tie', 'waste'].map((name) => (
              <th key={name} scope="col" className="number">
                {name}
              </th>
            ))}
            <th scope="col">rests on</th>
          </tr>
        </thead>
        <tbody>
          {wires.map(({ strings, joined, diameter, cut, remarks }) => (
            <tr key={`${strings[0]!.key}/${strings[0]!.string}`}>
              <th scope="row">
                {strings.map(({ key, string }) => `${noteName(key)}/${string}`).join(' + ')}
                {joined === 'tied' && <span className="faint"> tied</span>}
              </th>
              <td>{wireText(diameter, unit)}</td>
              <td className="number">
                <strong>{part(cut?.total)}</strong>
              </td>
              <td className="number">{part(cut?.parts.front)}</td>
              <td className="number">{part(cut?.parts.speaking)}</td>
              <td className="number">{part(cut?.parts.back)}</td>
              <td className="number">{part(cut?.parts.coils)}</td>
              <td className="number">{part(cut?.parts.beckets)}</td>
              <td className="number">
                {part(cut === undefined ? undefined : cut.parts.hitch + cut.parts.tie)}
              </td>
              <td className="number">{part(cut?.parts.waste)}</td>
              <td>{remarks.length === 0 ? 'readings' : remarks.join('; ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
