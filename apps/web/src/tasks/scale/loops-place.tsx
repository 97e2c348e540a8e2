import { message, noteName } from '@becket/core';
import { type ProposedNote, proposedScaleNotes, scaleNotesOf, type WhichScale } from '@becket/journal';
import {
  loopsAndCuts,
  notesLeftOut,
  orderPolicyOf,
  type SectionLoops,
  sourcesInWords,
  tidiedScale,
  type WireToCut,
} from '@becket/tasks';
import { useMemo } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { go } from '../../desk/use-route.ts';
import { useShop } from '../../desk/use-shop.ts';
import { useLanguage } from '../../parts/language.tsx';
import { type LengthUnit, lengthNumber, lengthText } from '../../parts/length-text.ts';
import { useObservable } from '../../parts/observable.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { figures, TableHeads } from '../../parts/table-heads.tsx';
import { pairOf, scaleChoices, standingPair } from './compare-state.ts';
import { draftFromScale } from './draft.ts';
import { countOf, LeftOut } from './left-out.tsx';
import { baseline, drawnSection } from './loop-drawing.ts';
import { LoopsPlan } from './loops-plan.tsx';
import { proposeStateOf } from './propose-state.ts';
import { wireText } from './scale-words.ts';
import { useInferredSizes } from './use-inferred-sizes.ts';

/** Which plain strings share a wire in one scale, and how long each wire is cut. */
export function LoopsPlace() {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const pair = pairOf(desk.id);
  const { after: which } = standingPair(job, useObservable(pair), language);
  const sizes = useInferredSizes();
  // Worn wire reads a little differently from note to note: what was found is taken in the sizes it most probably had.
  const tidied = useMemo(
    () => (which === 'as found' && sizes.is === 'there' ? tidiedScale(job, sizes.sizes) : undefined),
    [job, which, sizes],
  );
  const scale = useMemo(
    () =>
      tidied === undefined
        ? scaleNotesOf(job, which, language)
        : proposedScaleNotes(job, { name: 'as found, in whole sizes', notes: tidied }),
    [job, which, tidied, language],
  );
  const { allowances } = useShop();
  const { cut, cutSource } = useMemo(() => orderPolicyOf(allowances), [allowances]);
  const sections = useMemo(() => loopsAndCuts(job, scale, cut, language), [job, scale, cut, language]);
  const leftOut = useMemo(
    () =>
      notesLeftOut(
        job,
        scale.notes.map(({ key }) => key),
        language,
        'plain',
      ),
    [job, scale, language],
  );
  const tied = sections.reduce((sum, { plan }) => sum + plan.tied, 0);
  const wires = sections.reduce((sum, section) => sum + section.wires.length, 0);
  return (
    <>
      <h2>{say('Loops and cuts')}</h2>
      <SelectField<WhichScale>
        label={say('Scale')}
        value={which}
        onChange={(value) => pair.update({ after: value })}
        options={scaleChoices(job, language)}
      />
      {sections.length === 0 ? (
        <p>
          {say('No plain string can be computed yet: enter sections, wires and speaking lengths in Record.')}
        </p>
      ) : (
        <>
          <p>
            {sayNodes(
              '{wires, plural, one {# plain wire} other {# plain wires}}, of which {tied}: the fewest with these sizes, as a loop joins two neighbours of one size within a section.',
              { wires, tied: <strong>{say('{count} tied', { count: tied })}</strong> },
            )}
          </p>
          <LeftOut
            sentence={say(
              'No wire is cut here for {count, plural, one {# plain note} other {# plain notes}} that cannot be computed yet. Beside them a string may come out tied that shares a wire in the end.',
              { count: countOf(leftOut) },
            )}
            notes={leftOut}
          />
          {which === 'as found' && (
            <p className="faint">
              {tidied === undefined
                ? say('As the worn wire was read, until the sizes it most probably had are worked out …')
                : say('What was found, in the sizes that its wire most probably had.')}
            </p>
          )}
          <p className="faint">
            {say(
              'Cut length = front + speaking + back lengths, {coils} coils and becket on each pin, half a turn round the hitch pin or {tie} for a tied loop, and {waste} waste at each pin ({source}). Cut the first wire of a size, string it, and correct before cutting the rest. Cut ends spring: hold both sides and wear glasses.',
              {
                coils: language.plain(cut.coils),
                tie: lengthText(cut.tie_m, unit, 'length', language),
                waste: lengthText(cut.waste_m, unit, 'length', language),
                source: sourcesInWords(cutSource, language),
              },
            )}
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
                    ? draftFromScale(job, which, change, language)
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
  const language = useLanguage();
  const { say } = language;
  const { section, plan, wires, shifts } = loops;
  const drawn = drawnSection(loops);
  const words = say('{section}: {wires, plural, one {# wire} other {# wires}}, {tied} tied', {
    section,
    wires: wires.length,
    tied: plan.tied,
  });
  return (
    <section aria-label={words}>
      <h3>{words}</h3>
      <TableFrame label={say('Loops of {section}, drawn', { section })}>
        <svg width={drawn.width} height={100} role="img" aria-label={words} className="loop-drawing">
          {drawn.changes.map(({ x, diameter_m }) => (
            <g key={x}>
              <line className="loop-change" x1={x} x2={x} y1={6} y2={94} />
              <text x={x + 4} y={18}>
                {lengthNumber(diameter_m, unit, 'diameter', language)}
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
          <p>{say('A change that moves by one note saves a tied string:')}</p>
          <ul>
            {shifts.map(({ sentence, key, diameter }) => (
              <li key={sentence}>
                {sentence}{' '}
                <button type="button" className="button quiet" onClick={() => onShift({ key, diameter })}>
                  {say('Take it into a draft')}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      <details>
        <summary className="button quiet">{say('Cut list of {section}', { section })}</summary>
        <CutList wires={wires} unit={unit} label={say('Cut list of {section}', { section })} />
      </details>
    </section>
  );
}

const cutListHeads = [
  message('[length of a wire] cut'),
  message('[part of a wire] front'),
  message('[part of a wire] speaking'),
  message('[part of a wire] back'),
  message('[on both pins] coils'),
  message('[on both pins] beckets'),
  message('[part of a wire] hitch or tie'),
  message('[part of a wire] waste'),
];

interface CutListProps {
  readonly wires: readonly WireToCut[];
  readonly unit: LengthUnit;
  readonly label: string;
}

function CutList({ wires, unit, label }: CutListProps) {
  const language = useLanguage();
  const { say } = language;
  const part = (length: number) => lengthNumber(length, unit, 'length', language);
  return (
    <TableFrame label={label}>
      <table className="table cut-list">
        <caption>{say('Lengths in {unit}', { unit })}</caption>
        <TableHeads
          heads={[
            say('strings'),
            say('wire'),
            ...cutListHeads.map((head) => figures(say(head))),
            say('rests on'),
          ]}
        />
        <tbody>
          {wires.map(({ strings, joined, diameter, cut, remarks }) => (
            <tr key={`${strings[0]!.key}/${strings[0]!.string}`}>
              <th scope="row">
                {strings.map(({ key, string }) => `${noteName(key)}/${string}`).join(' + ')}
                {joined === 'tied' && <span className="faint"> {say('tied')}</span>}
              </th>
              <td>{wireText(diameter, unit, language)}</td>
              <td className="number">
                <strong>{part(cut.total)}</strong>
              </td>
              <td className="number">{part(cut.parts.front)}</td>
              <td className="number">{part(cut.parts.speaking)}</td>
              <td className="number">{part(cut.parts.back)}</td>
              <td className="number">{part(cut.parts.coils)}</td>
              <td className="number">{part(cut.parts.beckets)}</td>
              <td className="number">{part(cut.parts.hitch + cut.parts.tie)}</td>
              <td className="number">{part(cut.parts.waste)}</td>
              <td>{remarks.length === 0 ? say('readings') : remarks.join('; ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
