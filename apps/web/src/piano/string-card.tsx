import type { Language } from '@becket/core';
import {
  type AsFoundNote,
  lengthKindOf,
  type ReadingQuantityName,
  readingQuantities,
  surveyThings,
} from '@becket/journal';
import { useDesk, useSelectedKey } from '../desk/use-desk.ts';
import { useSettings } from '../desk/use-device.ts';
import { useLanguage } from '../parts/language.tsx';
import { type LengthUnit, lengthText, otherUnit, uncertaintyText } from '../parts/length-text.ts';
import { NotePhotos } from '../photos/note-photos.tsx';
import { findingsOfNote } from './finding-marks.ts';
import { StringFigures } from './string-figures.tsx';

/** Everything that is known of the strings of one note. */
export function StringCard() {
  const language = useLanguage();
  const { fixed, say } = language;
  const { job, record } = useDesk();
  const [selected] = useSelectedKey();
  const { unit } = useSettings();
  const note = record.notes.find(({ key }) => key === selected);
  if (note === undefined) {
    return (
      <section className="string-card" aria-label={say('String card')}>
        <p className="faint">{say('Tap a string in the plan, or a note, to see what is known of it.')}</p>
      </section>
    );
  }
  const scaleNote = record.scaleNotes.find(({ key }) => key === selected);
  const quantities = Object.keys(readingQuantities) as ReadingQuantityName[];
  const shown = quantities.filter(
    (quantity) => note.figures[quantity] ?? note.absences[quantity] ?? note.missing.includes(quantity),
  );
  return (
    <section className="string-card" aria-label={say('String card: {note}', { note: note.note })}>
      <h2>
        {note.note} <span className="faint">{say('key {key}', { key: note.key })}</span>
      </h2>
      <p>{stringingWords(note, language)}</p>
      {note.contradiction !== undefined && (
        <p className="warn">
          {say('▲ Not computed: {contradiction}.', { contradiction: note.contradiction })}
        </p>
      )}
      <dl className="facts">
        {shown.map((quantity) => (
          <FigureLine key={quantity} note={note} quantity={quantity} unit={unit} />
        ))}
        {scaleNote !== undefined && <StringFigures key={scaleNote.key} note={scaleNote} unit={unit} />}
        <dt>{say('pitch')}</dt>
        <dd>{say('{figure} Hz, equal temperament', { figure: fixed(note.frequency, 2) })}</dd>
      </dl>
      {findingsOfNote(job, { key: note.key, section: note.section?.section }).map(
        ({ entry, thing, answer }) => (
          <p key={entry} className="card-finding" data-gravity={answer.gravity}>
            {say(surveyThings[thing].label)}: {answer.what}{' '}
            <span className="faint">
              ({say(answer.gravity)};{' '}
              {answer.whatToDo === 'nothing' ? say('nothing to do') : say(answer.whatToDo)})
            </span>
          </p>
        ),
      )}
      <NotePhotos noteKey={note.key} section={note.section?.section} />
    </section>
  );
}

export function stringingWords(note: AsFoundNote, { say }: Language): string {
  const where =
    note.section === undefined
      ? say('in no section')
      : say('section {section}', { section: note.section.section });
  if (note.strings === undefined) return say('stringing not described; {where}', { where });
  const kind =
    note.winding === 'wound' ? (note.layers === 2 ? say('wound twice') : say('wound')) : say('plain');
  return say('{count, plural, one {# string} other {# strings}}, {kind}; {where}', {
    count: note.strings,
    kind,
    where,
  });
}

interface FigureLineProps {
  readonly note: AsFoundNote;
  readonly quantity: ReadingQuantityName;
  readonly unit: LengthUnit;
}

function FigureLine({ note, quantity, unit }: FigureLineProps) {
  const language = useLanguage();
  const { say } = language;
  const { label, dimension } = readingQuantities[quantity];
  const figure = note.figures[quantity];
  const kind = lengthKindOf(quantity);
  return (
    <>
      <dt>{say(label)}</dt>
      <dd>
        {figure === undefined ? (
          note.absences[quantity] === undefined ? (
            <span className="warn">{say('not read yet')}</span>
          ) : (
            say(note.absences[quantity])
          )
        ) : dimension === 'length' ? (
          <>
            <strong>{lengthText(figure.value, unit, kind, language)}</strong>{' '}
            <span className="faint">
              = {lengthText(figure.value, otherUnit(unit), kind, language)}
              {', '}
              {[
                say(figure.origin),
                uncertaintyText(figure.standardUncertainty, unit, kind, language),
                say('{count, plural, one {# reading} other {# readings}}', { count: figure.readings.length }),
              ]
                .filter((words) => words !== '')
                .join(', ')}
            </span>
          </>
        ) : (
          say('{figure} (SI)', { figure: language.plain(Number(figure.value.toPrecision(4))) })
        )}
      </dd>
    </>
  );
}
