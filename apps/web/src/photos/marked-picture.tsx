import type { PhotoMark, PhotoScale } from '@becket/journal';
import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react';
import { useLanguage } from '../parts/language.tsx';
import type { LengthUnit } from '../parts/length-text.ts';
import {
  crossSteps,
  type Drawing,
  inside,
  type MarkKind,
  markOf,
  movedBy,
  type Point,
  shortWords,
} from './drawing.ts';
import type { Photo } from './photo-place.ts';

interface Props {
  readonly photo: Photo;
  readonly address: string;
  readonly scale: PhotoScale | undefined;
  readonly unit: LengthUnit;
  /** What a stroke draws; undefined while nothing may be drawn. */
  readonly kind: MarkKind | undefined;
  readonly onDraw: (mark: PhotoMark) => void;
}

/** A photo with its marks above it; drawn on with a finger, a pointer, or the keys. The picture itself never changes. */
export function MarkedPicture({ photo, address, scale, unit, kind, onDraw }: Props) {
  const language = useLanguage();
  const { fixed, say } = language;
  const { width, height, marks } = photo;
  const frame = useRef<SVGSVGElement>(null);
  const [drawing, setDrawing] = useState<Drawing>();
  const [cross, setCross] = useState<Point>();
  /** Photo pixels to one pixel of the screen: so that lines and words are as large on a phone as on a desk. */
  const [pixel, setPixel] = useState(width / 700);

  useEffect(() => {
    const element = frame.current;
    if (element === null) return;
    const measure = () => {
      if (element.clientWidth > 0) setPixel(width / element.clientWidth);
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, [width]);

  const pointOf = (event: PointerEvent): Point => {
    const box = frame.current!.getBoundingClientRect();
    return inside({ x: (event.clientX - box.left) / box.width, y: (event.clientY - box.top) / box.height });
  };

  function finish(from: Point, to: Point): void {
    const mark = kind === undefined ? undefined : markOf(kind, from, to);
    setDrawing(undefined);
    if (mark !== undefined) onDraw(mark);
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (kind === undefined) return;
    const step = event.shiftKey ? crossSteps.coarse : event.altKey ? crossSteps.fine : crossSteps.plain;
    const at = cross ?? { x: 0.5, y: 0.5 };
    const moved = movedBy(at, event.key, step);
    if (moved !== undefined) {
      setCross(moved);
      setDrawing((now) => now && { ...now, at: moved });
    } else if (event.key === 'Enter' || event.key === ' ') {
      setCross(at);
      if (kind === 'label') finish(at, at);
      else if (drawing?.from === undefined) setDrawing({ from: at, at });
      else finish(drawing.from, at);
    } else if (event.key === 'Escape' && drawing !== undefined) {
      setDrawing(undefined);
    } else {
      return;
    }
    event.preventDefault();
  }

  const percent = (share: number) => `${fixed(100 * share, 1)} %`;
  const draft = drawing?.from && kind !== undefined ? markOf(kind, drawing.from, drawing.at) : undefined;
  const pen = { width, height, pixel };
  return (
    <figure className="marked">
      <div className="marked-frame" style={{ aspectRatio: `${width} / ${height}` }}>
        <img src={address} alt={photo.shows ?? say('The photo')} />
        <svg
          ref={frame}
          viewBox={`0 0 ${width} ${height}`}
          role="application"
          aria-label={say(
            'Drawing area. Arrow keys move a cross, Enter sets a point, Escape gives a stroke up.',
          )}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: worked with keys as well as with a finger
          tabIndex={0}
          data-drawing={kind !== undefined}
          onKeyDown={onKeyDown}
          onFocus={() => setCross((now) => now ?? { x: 0.5, y: 0.5 })}
          onBlur={() => {
            setCross(undefined);
            setDrawing(undefined);
          }}
          onPointerDown={(event) => {
            if (kind === undefined || !event.isPrimary || event.button !== 0) return;
            event.currentTarget.setPointerCapture(event.pointerId);
            const at = pointOf(event);
            setCross(at);
            setDrawing({ from: at, at });
          }}
          onPointerMove={(event) => {
            if (!event.isPrimary || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
            const at = pointOf(event);
            setCross(at);
            setDrawing((now) => now && { ...now, at });
          }}
          onPointerUp={(event) => {
            if (!event.isPrimary || drawing?.from === undefined) return;
            if (event.currentTarget.hasPointerCapture(event.pointerId)) finish(drawing.from, pointOf(event));
          }}
          onPointerCancel={() => setDrawing(undefined)}
        >
          {/* What they say stands in the list below the picture as well. */}
          {marks.map((mark, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a mark has no name but its place in the list
            <g key={index}>
              <Mark mark={mark} words={shortWords(mark, index, { scale, unit }, language)} {...pen} />
            </g>
          ))}
          {draft !== undefined && <Mark mark={draft} words="" {...pen} />}
          {cross !== undefined && kind !== undefined && <Cross at={cross} {...pen} />}
        </svg>
      </div>
      <figcaption className="faint">
        {kind === undefined
          ? say('Nothing can be drawn until the reason is given.')
          : kind === 'label'
            ? say('Tap where the label belongs.')
            : kind === 'arrow'
              ? say('Draw from one end of the arrow to the other, the tip last.')
              : say('Draw from one end of the distance to the other.')}{' '}
        {say('By keys: the arrow keys move the cross (with Shift far, with Alt finely), Enter sets a point.')}
      </figcaption>
      <p role="status" className="unseen">
        {cross === undefined
          ? ''
          : say(
              '{isBegun, select, yes {cross {left} from the left, {top} from the top, stroke begun} other {cross {left} from the left, {top} from the top}}',
              {
                left: percent(cross.x),
                top: percent(cross.y),
                isBegun: drawing?.from === undefined ? 'no' : 'yes',
              },
            )}
      </p>
    </figure>
  );
}

interface Pen {
  readonly width: number;
  readonly height: number;
  readonly pixel: number;
}

/** A mark: a dark line in a light border, seen on any picture; kinds differ by shape. */
function Mark({ mark, words, width, height, pixel }: Pen & { mark: PhotoMark; words: string }) {
  const at = ({ x, y }: Point): Point => ({ x: x * width, y: y * height });
  if (mark.mark === 'label') {
    const { x, y } = at(mark.at);
    return (
      <>
        <circle className="mark-dot" cx={x} cy={y} r={7 * pixel} strokeWidth={3 * pixel} />
        <Words x={x} y={y - 14 * pixel} words={words} width={width} pixel={pixel} />
      </>
    );
  }
  const from = at(mark.from);
  const to = at(mark.to);
  const direction = Math.atan2(to.y - from.y, to.x - from.x);
  const tip = (angle: number, length: number) => ({
    x: to.x + Math.cos(direction + angle) * length * pixel,
    y: to.y + Math.sin(direction + angle) * length * pixel,
  });
  const across = (end: Point) => {
    const x = Math.cos(direction + Math.PI / 2) * 10 * pixel;
    const y = Math.sin(direction + Math.PI / 2) * 10 * pixel;
    return `M ${end.x - x} ${end.y - y} L ${end.x + x} ${end.y + y}`;
  };
  const [left, right] = [tip(Math.PI - 0.45, 20), tip(Math.PI + 0.45, 20)];
  const shape =
    mark.mark === 'arrow'
      ? `M ${from.x} ${from.y} L ${to.x} ${to.y} M ${left.x} ${left.y} L ${to.x} ${to.y} L ${right.x} ${right.y}`
      : `M ${from.x} ${from.y} L ${to.x} ${to.y} ${across(from)} ${across(to)}`;
  // Words stand beside the middle of the line, on its upper side.
  const normal = direction + (Math.cos(direction) >= 0 ? -Math.PI / 2 : Math.PI / 2);
  const beside = {
    x: (from.x + to.x) / 2 + Math.cos(normal) * 14 * pixel,
    y: (from.y + to.y) / 2 + Math.sin(normal) * 14 * pixel,
  };
  const isBar = mark.mark === 'distance' && mark.known_m !== undefined;
  return (
    <>
      <path className="mark-border" d={shape} strokeWidth={7 * pixel} />
      <path className="mark-line" d={shape} strokeWidth={(isBar ? 4.5 : 3) * pixel} />
      <Words x={beside.x} y={beside.y} words={words} width={width} pixel={pixel} side={Math.cos(normal)} />
    </>
  );
}

interface WordsProps {
  readonly x: number;
  readonly y: number;
  readonly words: string;
  readonly width: number;
  readonly pixel: number;
  /** Which way from the point: −1 to its left, 1 to its right, 0 above it. */
  readonly side?: number;
}

/** Words on the picture, kept inside its left and right edges. */
function Words({ x, y, words, width, pixel, side = 0 }: WordsProps) {
  if (words === '') return null;
  const isToRight = x < width * 0.2 || (side > 0.25 && x < width * 0.8);
  const isToLeft = x > width * 0.8 || side < -0.25;
  return (
    <text
      className="mark-words"
      x={x}
      y={Math.max(y, 20 * pixel)}
      fontSize={18 * pixel}
      strokeWidth={5 * pixel}
      textAnchor={isToRight ? 'start' : isToLeft ? 'end' : 'middle'}
    >
      {words}
    </text>
  );
}

function Cross({ at, width, height, pixel }: Pen & { at: Point }) {
  const { x, y } = { x: at.x * width, y: at.y * height };
  const arm = 16 * pixel;
  const shape = `M ${x - arm} ${y} H ${x + arm} M ${x} ${y - arm} V ${y + arm}`;
  return (
    <>
      <path className="mark-border" d={shape} strokeWidth={5 * pixel} />
      <path className="mark-line" d={shape} strokeWidth={1.5 * pixel} />
    </>
  );
}
