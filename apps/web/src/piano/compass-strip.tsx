import type { PointerEvent } from 'react';
import { useDesk, useSelectedKey } from '../desk/use-desk.ts';

const whiteKeys = new Set([0, 2, 3, 5, 7, 8, 10]);

/** The compass as a strip of keys, with the sections above it. Slide along it to go from note to note. */
export function CompassStrip({ onChoose }: { onChoose: (key: number) => void }) {
  const { job, record } = useDesk();
  const [selected, select] = useSelectedKey();
  const { notes } = record;
  if (notes.length === 0) return null;

  function keyAt(event: PointerEvent<HTMLDivElement>): number | undefined {
    const { left, width } = event.currentTarget.getBoundingClientRect();
    const index = Math.floor(((event.clientX - left) / width) * notes.length);
    return notes[Math.min(notes.length - 1, Math.max(0, index))]?.key;
  }

  return (
    <div
      className="compass"
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        const key = keyAt(event);
        if (key !== undefined) select(key);
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
      // The plan above and the rows of Record offer the same to the keyboard and to a screen reader.
      aria-hidden="true"
    >
      <div className="compass-sections">
        {job.sections.map(({ section, firstKey, lastKey }) => (
          <span
            key={section}
            style={{
              left: `${((firstKey - notes[0]!.key) / notes.length) * 100}%`,
              width: `${((lastKey - firstKey + 1) / notes.length) * 100}%`,
            }}
          >
            {section}
          </span>
        ))}
      </div>
      <div className="compass-keys">
        {notes.map(({ key, missing, strings }) => (
          <i
            key={key}
            data-white={whiteKeys.has((key - 1) % 12) || undefined}
            data-chosen={key === selected || undefined}
            data-complete={(strings !== undefined && missing.length === 0) || undefined}
          />
        ))}
      </div>
    </div>
  );
}
