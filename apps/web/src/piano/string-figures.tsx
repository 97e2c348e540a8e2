import { analyseNote, type ScaleNote } from '@becket/core';
import { useMemo } from 'react';
import { forceText } from '../parts/force-text.ts';
import { type LengthUnit, otherUnit } from '../parts/length-text.ts';

/** What the strings of a note do at pitch: worked out from the readings, each figure with what it rests on. */
export function StringFigures({ note, unit }: { note: ScaleNote; unit: LengthUnit }) {
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
        <dt>tension</dt>
        <dd className="warn">▲ {analysis}</dd>
      </>
    );
  }
  const { tension, breakShare, inharmonicity, standardUncertainties: spread } = analysis;
  return (
    <>
      <dt>tension</dt>
      <dd>
        <strong>{forceText(tension, unit)}</strong>{' '}
        <span className="faint">
          = {forceText(tension, otherUnit(unit))}
          {spread && `, ± ${forceText(spread.tension, unit)}`}, each string; calculated
        </span>
      </dd>
      <dt>break share</dt>
      <dd>
        <strong>{(breakShare * 100).toFixed(0)} %</strong>{' '}
        <span className="faint">
          of the break load{spread && `, ± ${(spread.breakShare * 100).toFixed(1)} %`};{' '}
          {analysis.strengthTable}
          {!analysis.isWithinStrengthTable && ', extended beyond its range'}
        </span>
      </dd>
      <dt>inharmonicity</dt>
      <dd>
        <strong>B = {inharmonicity.toExponential(2)}</strong>{' '}
        <span className="faint">
          {spread && `± ${((spread.inharmonicity / inharmonicity) * 100).toFixed(0)} %; `}
          {analysis.inharmonicityMethod}
        </span>
      </dd>
    </>
  );
}
