import type { AsFoundNote, Section } from '@becket/journal';

/** One note's string as the plan draws it, in metres of the piano; x to the treble, y from the front termination back. */
export interface PlanLine {
  readonly key: number;
  readonly note: string;
  readonly section: string | undefined;
  readonly winding: 'plain' | 'wound' | undefined;
  /** The strings of one note, or a short tick at the front where no length was read yet. */
  readonly front: PlanPoint;
  readonly back: PlanPoint;
  /** Where the winding begins and ends, when both bare ends are known. */
  readonly windingFrom: PlanPoint | undefined;
  readonly windingTo: PlanPoint | undefined;
  readonly isLengthKnown: boolean;
  /** Runs over the others, to a bridge behind theirs. */
  readonly isCrossing: boolean;
}

export interface PlanPoint {
  readonly x: number;
  readonly y: number;
}

export interface Plan {
  readonly lines: readonly PlanLine[];
  /** Lines that join the bridge pins of a section, bass to treble. */
  readonly bridges: readonly { readonly section: string; readonly points: readonly PlanPoint[] }[];
  readonly width: number;
  readonly height: number;
  /** Notes whose length is known, of all. */
  readonly known: number;
}

/**
 * How the plan is laid out where readings say nothing of it. Only lengths and the order of notes are to scale.
 * A hammer line of 88 notes is about 1.22 m long, some 14 mm to a note (common practice, no source); the slants are
 * chosen so that crossing bass strings are told apart from the ones below.
 */
const notePitch = 0.0139;
const bassSlant = 0.4;
const longBridgeSlant = -0.22;
const tick = 0.04;

/** Lays the strings of a piano out to scale, from its own readings. */
export function layOutPlan(notes: readonly AsFoundNote[], sections: readonly Section[]): Plan {
  const lowestBridge = sections[0]?.bridge;
  const hasCrossing =
    lowestBridge !== undefined &&
    lowestBridge !== 'unknown' &&
    sections.some(({ bridge }) => bridge !== lowestBridge && bridge !== 'unknown');
  const isCrossing = (note: AsFoundNote) => hasCrossing && note.section?.bridge === lowestBridge;
  const firstLong = notes.find((note) => !isCrossing(note))?.key ?? 0;
  const lastKey = notes.at(-1)?.key ?? 0;

  const lines = notes.map((note, index): PlanLine => {
    const length = note.figures['speaking-length']?.value;
    const crossing = isCrossing(note);
    // The slant of the long bridge fades towards the treble, where strings run straight back.
    const fade = crossing || lastKey <= firstLong ? 0 : 1 - (note.key - firstLong) / (lastKey - firstLong);
    const slant = hasCrossing ? (crossing ? bassSlant : longBridgeSlant * fade ** 1.5) : 0;
    const front = { x: index * notePitch, y: 0 };
    const drawn = length ?? tick;
    const at = (distance: number): PlanPoint => ({
      x: front.x + distance * Math.sin(slant),
      y: front.y + distance * Math.cos(slant),
    });
    const bareFront = bareEnd(note, 'bare-front');
    const bareBack = bareEnd(note, 'bare-back');
    const hasWinding =
      note.winding === 'wound' && length !== undefined && bareFront !== undefined && bareBack !== undefined;
    return {
      key: note.key,
      note: note.note,
      section: note.section?.section,
      winding: note.winding,
      front,
      back: at(drawn),
      windingFrom: hasWinding ? at(bareFront) : undefined,
      windingTo: hasWinding ? at(length - bareBack) : undefined,
      isLengthKnown: length !== undefined,
      isCrossing: crossing,
    };
  });

  const left = Math.min(0, ...lines.map(({ back }) => back.x));
  const right = Math.max(notePitch, ...lines.map(({ front, back }) => Math.max(front.x, back.x)));
  const shift = ({ x, y }: PlanPoint): PlanPoint => ({ x: x - left, y });
  const shifted = lines.map((line) => ({
    ...line,
    front: shift(line.front),
    back: shift(line.back),
    windingFrom: line.windingFrom && shift(line.windingFrom),
    windingTo: line.windingTo && shift(line.windingTo),
  }));
  return {
    // Crossing strings lie on top, so they are drawn last.
    lines: [...shifted.filter((line) => !line.isCrossing), ...shifted.filter((line) => line.isCrossing)],
    bridges: sections.map(({ section }) => ({
      section,
      points: shifted
        .filter((line) => line.section === section && line.isLengthKnown)
        .map(({ back }) => back),
    })),
    width: right - left,
    height: Math.max(0.3, ...shifted.map(({ back }) => back.y)),
    known: shifted.filter(({ isLengthKnown }) => isLengthKnown).length,
  };
}

function bareEnd(note: AsFoundNote, quantity: 'bare-front' | 'bare-back'): number | undefined {
  return note.figures[quantity]?.value ?? (note.absences[quantity] === 'none' ? 0 : undefined);
}

/** The key of the line that passes nearest to a point; undefined when none does within `reach` [m]. */
export function nearestKey(plan: Plan, point: PlanPoint, reach: number): number | undefined {
  let best: { key: number; distance: number } | undefined;
  for (const { key, front, back } of plan.lines) {
    const distance = distanceToSegment(point, front, back);
    // At equal distance the later line wins: it lies on top.
    if (distance <= reach && (best === undefined || distance <= best.distance)) best = { key, distance };
  }
  return best?.key;
}

function distanceToSegment(point: PlanPoint, from: PlanPoint, to: PlanPoint): number {
  const along = { x: to.x - from.x, y: to.y - from.y };
  const squared = along.x ** 2 + along.y ** 2;
  const share = squared === 0 ? 0 : ((point.x - from.x) * along.x + (point.y - from.y) * along.y) / squared;
  const within = Math.min(1, Math.max(0, share));
  return Math.hypot(point.x - from.x - within * along.x, point.y - from.y - within * along.y);
}
