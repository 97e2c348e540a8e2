import { analyseNote, type ScaleNote, sayKnown } from '@becket/core';
import { useMemo } from 'react';
import { exponentText } from '../parts/exponent-text.ts';
import { forceText } from '../parts/force-text.ts';
import { useLanguage } from '../parts/language.tsx';
import { type LengthUnit, otherUnit } from '../parts/length-text.ts';

/** What the strings of a note do at pitch: worked out from the readings, each figure with what it rests on. */
export function StringFigures({ note, unit }: { note: ScaleNote; unit: LengthUnit }) {
  const language = useLanguage();
  const { fixed, say } = language;
  const analysis = useMemo(() => {
    try {
      return analyseNote(note);
    } catch (error) {
      // Readings that contradict each other can describe a string that cannot be; the sentence says which figure.
      if (error instanceof RangeError) return error.message;
      throw error;
    }
  }, [note]);
  if (typeof analysis === 'string') {
    return (
      <>
        <dt>{say('tension')}</dt>
        <dd className="warn">▲ {analysis}</dd>
      </>
    );
  }
  const { tension, breakShare, inharmonicity, standardUncertainties: spread } = analysis;
  return (
    <>
      <dt>{say('tension')}</dt>
      <dd>
        <strong>{forceText(tension, unit)}</strong>{' '}
        <span className="faint">
          {say('= {tension}, each string; calculated', {
            tension: `${forceText(tension, otherUnit(unit))}${spread === undefined ? '' : `, ± ${forceText(spread.tension, unit)}`}`,
          })}
        </span>
      </dd>
      <dt>{say('break share')}</dt>
      <dd>
        <strong>{fixed(breakShare * 100, 0)} %</strong>{' '}
        <span className="faint">
          {say('of the break load')}
          {spread === undefined ? '' : `, ± ${fixed(spread.breakShare * 100, 1)} %`};{' '}
          {analysis.isWithinStrengthTable
            ? sayKnown(analysis.strengthTable, language)
            : say('{table}, extended beyond its range', {
                table: sayKnown(analysis.strengthTable, language),
              })}
        </span>
      </dd>
      <dt>{say('inharmonicity')}</dt>
      <dd>
        <strong>B = {exponentText(inharmonicity, language)}</strong>{' '}
        <span className="faint">
          {spread && `± ${fixed((spread.inharmonicity / inharmonicity) * 100, 0)} %; `}
          {say(analysis.inharmonicityMethod)}
        </span>
      </dd>
    </>
  );
}
