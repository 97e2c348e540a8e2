import type { WoundCheckName } from '@becket/core';
import type { ReadingQuantityName } from '@becket/journal';
import { fittedLengths, type NoteLength, type SectionLengths } from '@becket/tasks';
import { useMemo } from 'react';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { go } from '../../desk/use-route.ts';
import { useLanguage } from '../../parts/language.tsx';
import { lengthText } from '../../parts/length-text.ts';
import './record-parts.css';
import { furtherColumns } from './grid.ts';
import { recordViewOf } from './record-state.ts';
import { bothUnits } from './typed-length.ts';

/** What to measure again first where a check fails: what is read with the least ease. Common practice, no source. */
const toMeasure: Readonly<Record<WoundCheckName, ReadingQuantityName>> = {
  'winding reaches the termination': 'winding-length',
  'winding and bare ends do not make the speaking length': 'winding-length',
  'loop to winding does not reach the bare end': 'loop-to-winding',
  'diameters do not grow outwards': 'over-all-diameter',
  'row grows to the treble': 'over-all-diameter',
  'winding end off the line': 'bare-front',
};

/** Speaking lengths against a line through their section, and what the wound strings' readings say against each other. */
export function LengthsPlace() {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const { unit } = useSettings();
  const sections = useMemo(() => fittedLengths(job, { lengthUnit: unit, language }), [job, unit, language]);
  return (
    <section aria-labelledby="lengths">
      <h2 id="lengths">{say('Lengths')}</h2>
      <p>
        {say(
          'The bridge and the front terminations are smooth, so the lengths of a section are too. What lies off the line is named; what was not read is filled with an interval and is never taken for a reading.',
        )}
      </p>
      {sections.length === 0 && (
        <p className="notice">{say('No section is described yet: a line belongs to one.')}</p>
      )}
      {sections.map((section) => (
        <SectionOfLengths key={section.section} lengths={section} />
      ))}
    </section>
  );
}

function SectionOfLengths({ lengths }: { lengths: SectionLengths }) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  const { unit } = useSettings();
  const [, select] = useSelectedKey();
  const { section, notes, scatter, reason, contradictions } = lengths;
  const outliers = notes.filter(({ outlier }) => outlier !== undefined);
  const gaps = notes.filter(({ read }) => read === undefined);
  const read = notes.length - gaps.length;

  function measure(key: number, column: ReadingQuantityName): void {
    const view = recordViewOf(desk.id);
    const withFurther = view.get().withFurther || furtherColumns.some(({ quantity }) => quantity === column);
    view.update({ column, withFurther, section: undefined });
    select(key);
    go({ place: 'job', job: desk.id, task: 'record' });
  }
  const measureButton = (
    { key, note }: Pick<NoteLength, 'key' | 'note'>,
    column: ReadingQuantityName = 'speaking-length',
  ) => (
    <button type="button" className="button quiet" onClick={() => measure(key, column)}>
      {say('Measure {note}', { note })}
    </button>
  );

  return (
    <section aria-label={say('Lengths of the section {section}', { section })}>
      <h3>
        {say('{section}: {read} of {notes} read', { section, read, notes: notes.length })}
        {scatter !== undefined && (
          <span className="faint">
            {`, ${say('about the line within {scatter}', {
              scatter: bothUnits(scatter, unit, 'length', language),
            })}`}
          </span>
        )}
      </h3>
      {reason !== undefined && <p>{reason}</p>}
      {reason === undefined && outliers.length === 0 && gaps.length === 0 && contradictions.length === 0 && (
        <p>{say('Every note is read, and every reading lies on the line.')}</p>
      )}
      {outliers.length > 0 && (
        <>
          <h4>{say('Off the line')}</h4>
          <ul className="plain-list row-list">
            {outliers.map((one) => (
              <li key={one.key}>
                <span>◇ {one.outlier?.sentence}</span>
                {measureButton(one)}
              </li>
            ))}
          </ul>
        </>
      )}
      {reason === undefined && gaps.length > 0 && (
        <>
          <h4>{say('Not read, filled from the line')}</h4>
          <ul className="plain-list row-list">
            {gaps.map((one) => (
              <li key={one.key}>
                <span>
                  <strong>{one.note}</strong> <em>{say('filled')}</em>{' '}
                  {one.fitted === undefined
                    ? ''
                    : say('{length}, 95 %: {low} to {high}', {
                        length: bothUnits(one.fitted.speakingLength, unit, 'length', language),
                        low: lengthText(one.fitted.low, unit, 'length', language),
                        high: lengthText(one.fitted.high, unit, 'length', language),
                      })}
                </span>
                {measureButton(one)}
              </li>
            ))}
          </ul>
        </>
      )}
      {contradictions.length > 0 && (
        <>
          <h4>{say('Wound strings that do not add up')}</h4>
          <ul className="plain-list row-list">
            {contradictions.map(({ check, keys, sentence }) => {
              const note = notes.find(({ key }) => key === keys[0]);
              return (
                <li key={`${check}/${keys.join()}`}>
                  <span>◇ {sentence}</span>
                  {note !== undefined && measureButton(note, toMeasure[check])}
                </li>
              );
            })}
          </ul>
        </>
      )}
    </section>
  );
}
