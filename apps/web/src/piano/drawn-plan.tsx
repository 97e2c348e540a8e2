import type { Language } from '@becket/core';
import { type PointerEvent, useMemo, useRef } from 'react';
import { useDesk, useSelectedKey } from '../desk/use-desk.ts';
import { useLanguage } from '../parts/language.tsx';
import { findingMarks } from './finding-marks.ts';
import { layOutPlan, nearestKey } from './plan-geometry.ts';

/** How near a finger has to come to a string, in metres of the piano. */
const reach = 0.03;
const margin = 0.03;

/**
 * The drawn plan: every string to scale from the piano's own readings, and the map on every screen.
 * A tap takes the nearest string; with the keyboard the arrow keys go from note to note.
 */
export function DrawnPlan({ onChoose }: { onChoose: (key: number) => void }) {
  const language = useLanguage();
  const { say } = language;
  const { job, record } = useDesk();
  const [selected, select] = useSelectedKey();
  const picture = useRef<SVGSVGElement>(null);
  const plan = useMemo(() => layOutPlan(record.notes, job.sections), [record, job.sections]);
  const marks = useMemo(() => findingMarks(job, plan), [job, plan]);
  const isUpright = job.piano?.form === 'vertical';
  const first = record.notes[0]?.key ?? 1;
  const last = record.notes.at(-1)?.key ?? 88;
  const chosen = plan.lines.find(({ key }) => key === selected);
  // A grand is seen from the keyboard, a vertical from its front: there the pins are above.
  const flip = (y: number) => (isUpright ? y : plan.height - y);

  function keyAt(event: PointerEvent): number | undefined {
    const matrix = picture.current?.getScreenCTM();
    if (!matrix) return undefined;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    return nearestKey(plan, { x, y: flip(y) }, reach);
  }

  return (
    <figure className="plan">
      <div
        className="plan-frame"
        role="slider"
        tabIndex={0}
        aria-label={say('Drawn plan of the strings: note')}
        aria-valuemin={first}
        aria-valuemax={last}
        aria-valuenow={selected ?? first}
        aria-valuetext={chosen ? planWords(chosen, language) : say('no note chosen')}
        aria-describedby="plan-caption"
        onPointerDown={(event) => {
          const key = keyAt(event);
          if (key === undefined) return;
          event.currentTarget.setPointerCapture(event.pointerId);
          select(key);
        }}
        onPointerMove={(event) => {
          if (event.buttons === 0) return;
          const key = keyAt(event);
          if (key !== undefined) select(key);
        }}
        onPointerUp={(event) => {
          const key = keyAt(event);
          if (key !== undefined) onChoose(key);
        }}
        onKeyDown={(event) => {
          const step = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 12, PageDown: -12 }[
            event.key
          ];
          const now = selected ?? first;
          let next: number | undefined;
          if (step !== undefined) next = Math.min(last, Math.max(first, now + step));
          if (event.key === 'Home') next = first;
          if (event.key === 'End') next = last;
          if (next !== undefined) {
            event.preventDefault();
            select(next);
          } else if (event.key === 'Enter' || event.key === ' ') {
            event.preventDefault();
            onChoose(now);
          }
        }}
      >
        <svg
          ref={picture}
          viewBox={`${-margin} ${-margin} ${plan.width + 2 * margin} ${plan.height + 2 * margin}`}
          aria-hidden="true"
        >
          {plan.bridges.map(({ section, points }) => (
            <polyline
              key={section}
              className="plan-bridge"
              points={points.map(({ x, y }) => `${x},${flip(y)}`).join(' ')}
            />
          ))}
          {plan.lines.map((line) => (
            <g key={line.key} className={lineClass(line, selected)}>
              <line x1={line.front.x} y1={flip(line.front.y)} x2={line.back.x} y2={flip(line.back.y)} />
              {line.windingFrom && line.windingTo && (
                <line
                  className="plan-winding"
                  x1={line.windingFrom.x}
                  y1={flip(line.windingFrom.y)}
                  x2={line.windingTo.x}
                  y2={flip(line.windingTo.y)}
                />
              )}
            </g>
          ))}
          {chosen && (
            <g className="plan-chosen">
              <line
                x1={chosen.front.x}
                y1={flip(chosen.front.y)}
                x2={chosen.back.x}
                y2={flip(chosen.back.y)}
              />
              <circle cx={chosen.front.x} cy={flip(chosen.front.y)} r={0.018} />
            </g>
          )}
          {marks.map(({ finding, at }) => (
            <circle
              key={finding.entry}
              className="plan-finding"
              data-gravity={finding.answer.gravity}
              cx={at.x}
              cy={flip(at.y)}
              r={0.022}
            />
          ))}
        </svg>
      </div>
      <figcaption id="plan-caption" className="faint">
        {plan.lines.length === 0
          ? say('The plan is drawn once the piano is described.')
          : say('Speaking lengths to scale, {known} of {all} read; spacing and slant are not measured.', {
              known: plan.known,
              all: plan.lines.length,
            })}
        {plan.lines.length > 0 &&
          marks.length > 0 &&
          ` ${say('{count, plural, one {# finding} other {# findings}} of the survey marked.', { count: marks.length })}`}
      </figcaption>
    </figure>
  );
}

function lineClass(
  line: { winding: string | undefined; isLengthKnown: boolean; key: number },
  selected?: number,
): string {
  const kind = line.isLengthKnown ? (line.winding === 'wound' ? 'plan-wound' : 'plan-plain') : 'plan-unread';
  return line.key === selected ? `${kind} is-chosen` : kind;
}

function planWords(
  { note, section, isLengthKnown }: { note: string; section: string | undefined; isLengthKnown: boolean },
  { say }: Language,
): string {
  return [
    note,
    section === undefined ? undefined : say('section {section}', { section }),
    isLengthKnown ? undefined : say('length not read yet'),
  ]
    .filter((part) => part !== undefined)
    .join(', ');
}
