import { metres } from '@becket/core';
import type { StringingCourse, WireToString } from '@becket/tasks';
import { useSettings } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { lengthText } from '../../parts/length-text.ts';
import { TakeBack } from '../../piano/take-back.tsx';
import { cutText, stateMarks, stringsText } from './wire-text.ts';

interface Props {
  readonly course: StringingCourse;
  /** The section that lies open: that of the wire that goes on next. */
  readonly open: string | undefined;
  /** This wire is wanted next. */
  readonly onWant: (id: string) => void;
}

/** Every wire of the plan, section by section, with how far each section is. */
export function WireList({ course, open, onWant }: Props) {
  const { say } = useLanguage();
  return (
    <section aria-label={say('Wires by section')}>
      {course.sections.map(({ section, wires, on }) => (
        <details key={section ?? ''} className="strung-section" open={section === open}>
          <summary>
            <span>{section ?? say('in no section')}</span>
            <progress max={wires} value={on} aria-label={section ?? say('in no section')} />
            <span>{say('{on} of {count}', { on, count: wires })}</span>
          </summary>
          <ul className="plain-list">
            {course.wires
              .filter((wire) => wire.section === section)
              .map((wire) => (
                <WireItem key={wire.id} wire={wire} onWant={onWant} />
              ))}
          </ul>
        </details>
      ))}
    </section>
  );
}

function WireItem({ wire, onWant }: { wire: WireToString; onWant: (id: string) => void }) {
  const { unit } = useSettings();
  const language = useLanguage();
  const { say, localDay } = language;
  const strings = stringsText(wire);
  const { mark, words } = stateMarks[wire.is];
  const { wire: standing } = wire;
  return (
    <li className="strung-wire" data-is={wire.is}>
      <span role="img" aria-label={say(words)}>
        {mark}
      </span>
      <span>
        <strong>{strings}</strong>{' '}
        <span className="faint">
          {[
            wire.diameter && lengthText(wire.diameter, unit, 'diameter', language),
            cutText(wire, unit, language),
            standing && say('{day}, {by}', { day: localDay(standing.at), by: standing.by }),
          ]
            .filter(Boolean)
            .join(' · ')}
        </span>
        {wire.isOtherSize && (
          <span className="warn">
            {' '}
            ▲{' '}
            {say('{size} went on', {
              size: lengthText(metres(standing!.diameter_m!), unit, 'diameter', language),
            })}
          </span>
        )}
        {wire.isAgain && <span className="warn"> ▲ {say('once more')}</span>}
        {wire.held !== undefined && <span className="warn"> ▲ {wire.held}</span>}
        {wire.is === 'in part' && (
          <span className="warn">
            {' '}
            ▲ {say('one of these strings carries a wire that is not of this plan')}
          </span>
        )}
      </span>
      {standing === undefined ? (
        wire.is === 'to do' &&
        wire.held === undefined && (
          <button
            type="button"
            className="button quiet"
            aria-label={say('Next: {strings}', { strings })}
            onClick={() => onWant(wire.id)}
          >
            {say('[this wire] Next')}
          </button>
        )
      ) : (
        <TakeBack entry={standing.entry} spoken={say('Take back: {place}', { place: strings })} />
      )}
    </li>
  );
}
