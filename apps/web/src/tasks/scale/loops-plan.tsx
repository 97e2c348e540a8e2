import { noteName } from '@becket/core';
import type { SectionLoops } from '@becket/tasks';
import { type KeyboardEvent, type MouseEvent, useEffect, useMemo, useRef, useState } from 'react';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { type LengthUnit, lengthNumber } from '../../parts/length-text.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { layOutPlan } from '../../piano/plan-geometry.ts';
import { loopsOnPlan, loopWords, noteAt, RING } from './loops-on-plan.ts';

interface Props {
  readonly sections: readonly SectionLoops[];
  readonly unit: LengthUnit;
}

/** The loop plan on the drawn plan: the whole piano, or one section enlarged. A tap on the whole piano enlarges a section. */
export function LoopsPlan({ sections, unit }: Props) {
  const language = useLanguage();
  const { say } = language;
  const { job, record } = useDesk();
  const [selected, select] = useSelectedKey();
  const [wanted, setWanted] = useState<string>('');
  const picture = useRef<SVGSVGElement>(null);
  const section = sections.some((one) => one.section === wanted) ? wanted : undefined;
  const isUpright = job.piano?.form === 'vertical';
  const plan = useMemo(() => layOutPlan(record.notes, job.sections), [record, job.sections]);
  const drawn = useMemo(
    () => loopsOnPlan(plan.lines, sections, { section, isUpright }),
    [plan, sections, section, isUpright],
  );
  const keys = drawn.notes.map(({ key }) => key).sort((a, b) => a - b);
  const chosen = drawn.notes.find(({ key }) => key === selected);
  const words = chosen && loopWords(chosen.key, sections, unit, language);

  // What was chosen on the whole piano, or with the keys, is brought into the frame.
  const chosenAt = chosen?.strings[0]?.hitch.x;
  useEffect(() => {
    const frame = picture.current?.parentElement;
    if (section === undefined || chosenAt === undefined || !frame) return;
    if (chosenAt < frame.scrollLeft + 40 || chosenAt > frame.scrollLeft + frame.clientWidth - 40)
      frame.scrollLeft = chosenAt - frame.clientWidth / 2;
  }, [section, chosenAt]);

  function tap(event: MouseEvent): void {
    const matrix = picture.current?.getScreenCTM();
    if (!matrix) return;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const key = noteAt(drawn.notes, { x, y });
    if (key === undefined) return;
    select(key);
    const its = sections.find(({ strings }) => strings.some((string) => string.key === key));
    if (section === undefined && its !== undefined) setWanted(its.section);
  }

  function step(event: KeyboardEvent): void {
    const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 12, PageDown: -12 }[
      event.key
    ];
    if (by === undefined) return;
    event.preventDefault();
    const index = keys.indexOf(selected ?? -1);
    const next = keys[Math.min(keys.length - 1, Math.max(0, index === -1 ? 0 : index + by))];
    if (next !== undefined) select(next);
  }

  const label =
    section === undefined
      ? say('Loops on the plan of the piano')
      : say('Loops on the plan, {section}', { section });
  return (
    <figure className={section === undefined ? 'loops-plan whole' : 'loops-plan'}>
      <SelectField
        label={say('Show on the plan')}
        value={section ?? ''}
        onChange={setWanted}
        options={[
          { value: '', words: say('the whole piano') },
          ...sections.map((one) => ({ value: one.section, words: one.section })),
        ]}
      />
      <p className="chart-spoken" aria-live="off">
        {words ?? <span className="faint">{say('Tap the plan to see which strings share a wire.')}</span>}
      </p>
      <div
        className="loops-plan-frame"
        role="slider"
        tabIndex={0}
        aria-label={say('{label}: note', { label })}
        aria-valuemin={keys[0] ?? 1}
        aria-valuemax={keys.at(-1) ?? 88}
        aria-valuenow={chosen?.key ?? keys[0] ?? 1}
        aria-valuetext={words ?? say('no note chosen')}
        onClick={tap}
        onKeyDown={step}
      >
        <svg
          ref={picture}
          viewBox={`0 0 ${drawn.width.toFixed(0)} ${drawn.height.toFixed(0)}`}
          {...(section === undefined ? {} : { width: drawn.width, height: drawn.height })}
          aria-hidden="true"
        >
          {drawn.others.map(({ key, from, to }) => (
            <line key={key} className="loops-plan-other" x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
          ))}
          {drawn.bridges.map(({ section: name, points }) => (
            <polyline
              key={name}
              className="loops-plan-bridge"
              points={points.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ')}
            />
          ))}
          {chosen?.strings.map(({ front, hitch }) => (
            <line
              key={front.x}
              className="loops-plan-chosen"
              x1={front.x}
              y1={front.y}
              x2={hitch.x}
              y2={hitch.y}
            />
          ))}
          {drawn.wires.map(({ name, path, joined, isOther, ring }) => (
            <g key={name} className={`loop-wire ${joined}${isOther ? ' other' : ''}`}>
              <path d={path} />
              {ring && <circle cx={ring.x} cy={ring.y} r={RING} />}
            </g>
          ))}
          {drawn.changes.map(({ from, to, isInsideLoop, diameter_m }) => (
            <g key={`${from.x}/${from.y}`}>
              <line className="loop-change" x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
              {isInsideLoop && <path className="loop-inside" d={`M${to.x - 6} ${to.y - 5}h12l-6 10z`} />}
              {section !== undefined && (
                <text x={from.x} y={isUpright ? from.y - 28 : from.y + 38} textAnchor="middle">
                  {lengthNumber(diameter_m, unit, 'diameter', language)}
                </text>
              )}
            </g>
          ))}
          {section !== undefined &&
            drawn.notes
              .filter(({ key }) => (key - 4) % 3 === 0)
              .map(({ key, strings: [{ front } = { front: { x: 0, y: 0 } }] }) => (
                <text key={key} x={front.x} y={isUpright ? front.y - 8 : front.y + 18} textAnchor="middle">
                  {noteName(key)}
                </text>
              ))}
        </svg>
      </div>
      <figcaption className="faint">
        <span className="loops-samples">
          <Sample word={say('one wire, two strings')}>
            <g className="loop-wire looped">
              <path d="M6 20V9C6 2 16 2 16 9V20" />
            </g>
          </Sample>
          <Sample word={say('tied: its own ring')}>
            <g className="loop-wire tied">
              <path d="M11 20V9" />
              <circle cx={11} cy={5.4} r={RING} />
            </g>
          </Sample>
          <Sample word={say('the size changes; colours take turns')}>
            <line className="loop-change" x1={11} y1={1} x2={11} y2={21} />
          </Sample>
          <Sample word={say('a change inside a loop, which costs a tied string')}>
            <path className="loop-inside" d="M5 6h12l-6 10z" />
          </Sample>
        </span>
        {section === undefined
          ? say(
              'Lengths and slants as on the plan, bridge to hitch pin included. Choose a section to see its strings apart.',
            )
          : say('Lengths and slants are to scale; the room between strings is widened.')}{' '}
        {drawn.withoutBack.length > 0 &&
          say('No back length is read in {sections}: 60 mm are drawn.', {
            sections: language.list(drawn.withoutBack),
          })}
      </figcaption>
    </figure>
  );
}

function Sample({ word, children }: { word: string; children: React.ReactNode }) {
  return (
    <span className="loops-sample">
      <svg width={22} height={22} aria-hidden="true">
        {children}
      </svg>{' '}
      {word}
    </span>
  );
}
