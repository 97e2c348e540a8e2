import { noteName } from '@becket/core';
import {
  nextWire,
  putWireOn,
  type StringingOrder,
  stringingOrders,
  type WireToString,
  withdrawEntry,
} from '@becket/tasks';
import { useEffect, useRef, useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { SelectField } from '../../parts/select-field.tsx';
import { NextWire } from './next-wire.tsx';
import { StringingMishaps } from './stringing-mishaps.tsx';
import { useCourse } from './use-course.ts';
import { WireList } from './wire-list.tsx';
import { stringsText } from './wire-text.ts';

interface Kept {
  readonly entry: string;
  readonly wire: WireToString;
}

/** What goes on next, large; ticking it off; and how far each section is. */
export function WiresPlace() {
  const { desk, job } = useDesk();
  const { say, sayNodes } = useLanguage();
  const { course, stringing } = useCourse();
  const [order, setOrder] = useState<StringingOrder>('bass first');
  const [wanted, setWanted] = useState<string>();
  const [passed, setPassed] = useState<string>();
  const [kept, setKept] = useState<readonly Kept[]>([]);
  const [problem, setProblem] = useState<string>();
  const isKeeping = useRef(false);
  const last = kept.at(-1);
  const next =
    course.wires.find(({ id, is }) => id === wanted && is === 'to do') ??
    nextWire(course, order, passed ?? last?.wire.id ?? latestOn(course.wires)?.id);

  // A note that is tapped on the plan is wanted next.
  const latest = useRef(course);
  latest.current = course;
  useEffect(
    () =>
      desk.selectedKey.subscribe(() => {
        const tapped = desk.selectedKey.get();
        const wire = latest.current.wires.find(
          ({ is, held, strings }) =>
            is === 'to do' && held === undefined && strings.some(({ key }) => key === tapped),
        );
        if (wire !== undefined) setWanted(wire.id);
      }),
    [desk],
  );

  async function putOn(wire: WireToString, diameter_m: number | undefined): Promise<boolean> {
    // A key that is held down, or pressed twice, notes one wire.
    if (isKeeping.current) return false;
    isKeeping.current = true;
    setProblem(undefined);
    try {
      const { entry } = await desk.runHere((context, id) =>
        putWireOn(context, id, {
          strings: wire.strings.map(({ key, string }) => ({ key, string })),
          ...(diameter_m === undefined ? {} : { diameter_m }),
        }),
      );
      setKept((now) => [...now.slice(-49), { entry, wire }]);
      setWanted(undefined);
      setPassed(undefined);
      return true;
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
      return false;
    } finally {
      isKeeping.current = false;
    }
  }

  async function undo(): Promise<void> {
    if (last === undefined) return;
    const done = await desk.run((context, id) =>
      withdrawEntry(context, id, last.entry, say('taken back at once')),
    );
    if (done === undefined) return;
    setKept((now) => now.slice(0, -1));
    setWanted(last.wire.id);
  }

  if (course.wires.length === 0)
    return (
      <p>
        {sayNodes(
          'No wire can be planned yet: sections, the strings of each note, and sizes and lengths are needed. {link}',
          {
            link: (
              <a href={hashOf({ place: 'job', job: desk.id, task: 'record', part: 'sections' })}>
                {say('Describe them in Record.')}
              </a>
            ),
          },
        )}
      </p>
    );
  return (
    <>
      <p>
        {sayNodes('By {scale}. {on} of {count} wires are on.', {
          scale: course.scale,
          on: <strong key="on">{course.on}</strong>,
          count: course.wires.length,
        })}
      </p>
      {next === undefined ? (
        <p role="status" className="notice">
          {course.on === course.wires.length
            ? say('● Every wire is on. Go on to Settle.')
            : say('Nothing is left that may go on now; what is held back stands in the list.')}
        </p>
      ) : (
        <NextWire
          key={next.id}
          wire={next}
          onPutOn={(diameter_m) => putOn(next, diameter_m)}
          onLeaveOut={() => {
            setWanted(undefined);
            setPassed(next.id);
          }}
        />
      )}
      <Problem says={problem} />
      <div className="strung-kept">
        <output aria-live="polite">
          {last === undefined ? (
            <span className="faint">{say('The wire noted last is read back here.')}</span>
          ) : (
            say('On: {strings}', { strings: stringsText(last.wire) })
          )}
        </output>
        <button type="button" className="button" disabled={last === undefined} onClick={once(undo)}>
          {say('Undo')}
        </button>
      </div>
      <StringingMishaps stringing={stringing} suggested={last?.wire.strings[0]} />
      <SelectField
        label={say('Which wire goes on next')}
        value={order}
        onChange={setOrder}
        options={(Object.keys(stringingOrders) as StringingOrder[]).map((value) => ({
          value,
          words: say(stringingOrders[value]),
        }))}
      />
      <WireList
        course={course}
        open={next?.section}
        onWant={(id) => {
          setWanted(id);
          window.scrollTo({ top: 0 });
        }}
      />
      {course.strays.length > 0 && (
        <p className="notice bad">
          {say('▲ On, but not in the plan: {strings}. The plan may have changed since.', {
            strings: stringsText({
              strings: course.strays.map(({ key, string }) => ({
                key,
                string,
                note: noteName(key),
                section: undefined,
              })),
            }),
          })}
        </p>
      )}
      <p>
        {sayNodes('Pins are logged as they go in under {pins}, torque after stringing under {torque}.', {
          pins: (
            <a key="pins" href={hashOf({ place: 'job', job: job.id, task: 'appraise', part: 'pins' })}>
              {say('Tuning pins')}
            </a>
          ),
          torque: (
            <a key="torque" href={hashOf({ place: 'job', job: job.id, task: 'appraise', part: 'torque' })}>
              {say('Pin torque')}
            </a>
          ),
        })}
      </p>
    </>
  );
}

/** The wire of the plan that went on last, by the journal. */
function latestOn(wires: readonly WireToString[]): WireToString | undefined {
  return wires
    .filter(({ wire }) => wire !== undefined)
    .toSorted((a, b) => a.wire!.step - b.wire!.step || (a.wire!.entry < b.wire!.entry ? -1 : 1))
    .at(-1);
}
