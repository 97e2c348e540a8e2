import { loopMap } from '@becket/journal';
import { woundDoubts } from '@becket/tasks';
import { useMemo } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { recordViewOf } from './record-state.ts';

/** What was read and said, and does not add up: worth a second look while the strings are on. It keeps nobody from sealing. */
export function StripDoubts() {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const [, select] = useSelectedKey();
  const wound = useMemo(
    () => woundDoubts(job, { lengthUnit: unit, language }).flatMap(({ contradictions }) => contradictions),
    [job, unit, language],
  );
  const wires = useMemo(() => loopMap(job, { lengthUnit: unit }, language).questions, [job, unit, language]);
  const open = wound.length + wires.length;
  if (open === 0) return null;
  const address = (part?: string) =>
    hashOf({ place: 'job', job: desk.id, task: 'record', ...(part === undefined ? {} : { part }) });
  return (
    <section aria-labelledby="strip-doubts">
      <h3 id="strip-doubts">{say('Does not add up: {open}', { open })}</h3>
      <p>
        {say(
          'These are there, and say different things of one string or wire. They do not keep the record from being sealed; once the strings are off nobody can look again.',
        )}
      </p>
      <ul className="gaps">
        {wound.map(({ check, keys, sentence }) => (
          <li key={`${check}/${keys.join()}`}>
            <span>◇ {sentence}</span>
            <a
              className="button quiet"
              href={address()}
              onClick={() => {
                // The note is looked at whatever section the readings were last narrowed to.
                recordViewOf(desk.id).update({ section: undefined });
                select(keys[0]);
              }}
            >
              {say('Go there')}
            </a>
          </li>
        ))}
        {wires.map(({ kind, sentence, noted, section }) => (
          <li key={`${kind}/${sentence}`}>
            <span>
              ◇ {sentence}
              {noted !== undefined && ` ${say('Noted of it: {noted}.', { noted })}`}
            </span>
            <a
              className="button quiet"
              href={address('loops')}
              onClick={() => {
                if (section !== undefined) recordViewOf(desk.id).update({ section });
              }}
            >
              {say('Go there')}
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
