import { keyRangeAt } from '@becket/core';
import { asFoundRecord } from '@becket/journal';
import { woundDoubts } from '@becket/tasks';
import { useDeferredValue, useMemo } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { useSame } from '../../parts/use-same.ts';
import { useSection } from './section-choice.tsx';

/**
 * What the readings of the wound strings say against each other, where they are typed: of the note in hand in full, of
 * the rest of the section as a count. It keeps nobody from going on.
 */
export function WoundDoubts() {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const [key] = useSelectedKey();
  const chosen = useSection();
  // Typing goes first: the check may come a moment later.
  const settled = useDeferredValue(job);
  // A reading of a plain string changes nothing here: a note keeps its object while nothing of it changes.
  const wound = useSame(asFoundRecord(settled).notes.filter(({ winding }) => winding === 'wound'));
  // biome-ignore lint/correctness/useExhaustiveDependencies: of the job only its sections and these notes count
  const doubts = useMemo(
    () => woundDoubts(settled, { lengthUnit: unit, language }),
    [wound, settled.sections, unit, language],
  );
  const section = key === undefined ? chosen : keyRangeAt(key, job.sections)?.section;
  const own = doubts.find((one) => one.section === section)?.contradictions ?? [];
  if (own.length === 0) return null;
  const here = own.filter(({ keys }) => key !== undefined && keys.includes(key));
  const rest = own.length - here.length;
  return (
    <div className="wound-doubts" role="status">
      {here.map(({ check, keys, sentence }) => (
        <p key={`${check}/${keys.join()}`}>
          <span aria-hidden="true">◇ </span>
          {sentence}
        </p>
      ))}
      {rest > 0 && (
        <p className="faint">
          {sayNodes(
            '{is, select, further {Further: } other {}}{rest, plural, one {# thing does} other {# things do}} not add up among the wound strings of this section; {link}.',
            {
              is: here.length === 0 ? 'first' : 'further',
              rest,
              link: (
                <a href={hashOf({ place: 'job', job: desk.id, task: 'record', part: 'lengths' })}>
                  {say('see Lengths')}
                </a>
              ),
            },
          )}
        </p>
      )}
    </div>
  );
}
