import { type AsFoundNote, type ReadingQuantityName, readingQuantities, surveyThings } from '@becket/journal';
import { useDesk, useSelectedKey } from '../desk/use-desk.ts';
import { useSettings } from '../desk/use-device.ts';
import { type LengthUnit, lengthText, otherUnit, uncertaintyText } from '../parts/length-text.ts';
import { NotePhotos } from '../photos/note-photos.tsx';
import { findingsOfNote } from './finding-marks.ts';
import { lengthKindOf } from './length-kind.ts';
import { StringFigures } from './string-figures.tsx';

/** Everything that is known of the strings of one note. */
export function StringCard() {
  const { job, record } = useDesk();
  const [selected] = useSelectedKey();
  const { unit } = useSettings();
  const note = record.notes.find(({ key }) => key === selected);
  if (note === undefined) {
    return (
      <section className="string-card" aria-label="String card">
        <p className="faint">Tap a string in the plan, or a note, to see what is known of it.</p>
      </section>
    );
  }
  const scaleNote = record.scaleNotes.find(({ key }) => key === selected);
  const quantities = Object.keys(readingQuantities) as ReadingQuantityName[];
  const shown = quantities.filter(
    (quantity) => note.figures[quantity] ?? note.absences[quantity] ?? note.missing.includes(quantity),
  );
  return (
    <section className="string-card" aria-label={`String card: ${note.note}`}>
      <h2>
        {note.note} <span className="faint">key {note.key}</span>
      </h2>
      <p>{stringingWords(note)}</p>
      {note.contradiction !== undefined && <p className="warn">▲ Not computed: {note.contradiction}.</p>}
      <dl className="facts">
        {shown.map((quantity) => (
          <FigureLine key={quantity} note={note} quantity={quantity} unit={unit} />
        ))}
        {scaleNote !== undefined && <StringFigures key={scaleNote.key} note={scaleNote} unit={unit} />}
        <dt>pitch</dt>
        <dd>{note.frequency.toFixed(2)} Hz, equal temperament</dd>
      </dl>
      {findingsOfNote(job, { key: note.key, section: note.section?.section }).map(
        ({ entry, thing, answer }) => (
          <p key={entry} className="card-finding" data-gravity={answer.gravity}>
            {surveyThings[thing].label}: {answer.what}{' '}
            <span className="faint">
              ({answer.gravity}; {answer.whatToDo === 'nothing' ? 'nothing to do' : answer.whatToDo})
            </span>
          </p>
        ),
      )}
      <NotePhotos noteKey={note.key} section={note.section?.section} />
    </section>
  );
}

export function stringingWords(note: AsFoundNote): string {
  const where = note.section === undefined ? 'in no section' : `section ${note.section.section}`;
  if (note.strings === undefined) return `stringing not described; ${where}`;
  const kind = note.winding === 'wound' ? (note.layers === 2 ? 'wound twice' : 'wound') : 'plain';
  return `${note.strings} ${note.strings === 1 ? 'string' : 'strings'}, ${kind}; ${where}`;
}

interface FigureLineProps {
  readonly note: AsFoundNote;
  readonly quantity: ReadingQuantityName;
  readonly unit: LengthUnit;
}

function FigureLine({ note, quantity, unit }: FigureLineProps) {
  const { label, dimension } = readingQuantities[quantity];
  const figure = note.figures[quantity];
  const kind = lengthKindOf(quantity);
  return (
    <>
      <dt>{label}</dt>
      <dd>
        {figure === undefined ? (
          note.absences[quantity] === undefined ? (
            <span className="warn">not read yet</span>
          ) : (
            note.absences[quantity]
          )
        ) : dimension === 'length' ? (
          <>
            <strong>{lengthText(figure.value, unit, kind)}</strong>{' '}
            <span className="faint">
              = {lengthText(figure.value, otherUnit(unit), kind)}
              {', '}
              {[
                figure.origin,
                uncertaintyText(figure.standardUncertainty, unit, kind),
                `${figure.readings.length} ${figure.readings.length === 1 ? 'reading' : 'readings'}`,
              ]
                .filter((words) => words !== '')
                .join(', ')}
            </span>
          </>
        ) : (
          `${figure.value.toPrecision(4)} (SI)`
        )}
      </dd>
    </>
  );
}
