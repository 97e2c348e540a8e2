import { english, type Language, noteName } from '@becket/core';
import type { SectionLoops } from '@becket/tasks';
import type { LengthUnit } from '../../parts/length-text.ts';
import type { PlanLine } from '../../piano/plan-geometry.ts';
import { wireText } from './scale-words.ts';

/** Drawn where no back length was read in a section [m]; the caption says so. */
const USUAL_BACK = 0.06;
/** Largest scale, and the height that a section's longest string may take. */
const MOST_PX_PER_METRE = 620;
const MOST_HEIGHT = 380;
/** Room between two strings of a section [px]: so that a loop can be told from its neighbour on a phone. */
const STRING_ROOM = 11;
/** Share of the room of a note that lies between two of its strings, on the whole piano. */
const SHARE_OF_NOTE = 0.3;

export interface DrawnPoint {
  readonly x: number;
  readonly y: number;
}

/** One wire on the plan: a loop turns round its hitch pin, a tied one ends in a ring. */
export interface WireOnPlan {
  readonly name: string;
  readonly joined: 'looped' | 'tied';
  /** Sizes take turns, so that a change can be seen. */
  readonly isOther: boolean;
  readonly path: string;
  readonly ring: DrawnPoint | undefined;
}

/** Where the size changes, from the front to behind the hitch pins. */
export interface ChangeOnPlan {
  readonly from: DrawnPoint;
  readonly to: DrawnPoint;
  readonly diameter_m: number;
  /** Whether it falls inside what would else be a loop, so that a string is tied for it. */
  readonly isInsideLoop: boolean;
}

/** Front and hitch pin of each string of a note. */
export interface NoteOnPlan {
  readonly key: number;
  readonly strings: readonly { readonly front: DrawnPoint; readonly hitch: DrawnPoint }[];
}

export interface LoopsOnPlan {
  readonly width: number;
  readonly height: number;
  readonly wires: readonly WireOnPlan[];
  readonly changes: readonly ChangeOnPlan[];
  /** Strings that share no wire, for orientation: wound ones, and those that are not computed. */
  readonly others: readonly { readonly key: number; readonly from: DrawnPoint; readonly to: DrawnPoint }[];
  /** Bridge pins of each section, in order. */
  readonly bridges: readonly { readonly section: string; readonly points: readonly DrawnPoint[] }[];
  readonly notes: readonly NoteOnPlan[];
  /** Sections whose back lengths are not read. */
  readonly withoutBack: readonly string[];
}

export interface LoopsView {
  /** One section enlarged; the whole piano where it is left out. */
  readonly section?: string | undefined;
  /** A vertical is seen from its front, with the pins above; a grand from the keyboard, with the hitch pins above. */
  readonly isUpright: boolean;
}

/**
 * The loop plan on the drawn plan of the piano. Every string keeps its length and its slant to scale, bridge to hitch pin
 * included; in a section by itself the room between strings is widened so that each can be seen.
 */
export function loopsOnPlan(
  lines: readonly PlanLine[],
  sections: readonly SectionLoops[],
  view: LoopsView,
): LoopsOnPlan {
  const lineOf = new Map(lines.map((line) => [line.key, line]));
  // A note that is no longer on the piano has no place on its plan.
  const shown = sections.filter(
    ({ section, strings }) =>
      (view.section === undefined || section === view.section) && strings.every(({ key }) => lineOf.has(key)),
  );
  const keys = new Set(shown.flatMap(({ strings }) => strings.map(({ key }) => key)));
  const longest = Math.max(
    0.2,
    ...lines.filter(({ key }) => view.section === undefined || keys.has(key)).map(lengthOf),
  );
  const scale =
    view.section === undefined ? MOST_PX_PER_METRE : Math.min(MOST_PX_PER_METRE, MOST_HEIGHT / longest);
  const canvas = new Canvas(view.isUpright);
  const others =
    view.section === undefined
      ? lines
          .filter(({ key }) => !keys.has(key))
          .map(({ key, front, back }) => ({ key, from: canvas.at(front, scale), to: canvas.at(back, scale) }))
      : [];
  const notePitch = pitchOf(lines);
  const drawn = shown.map((loops) => {
    const counts = new Map<number, number>();
    for (const { key } of loops.strings) counts.set(key, (counts.get(key) ?? 0) + 1);
    const strings = loops.strings.map(({ key, string, backLength }, index) => {
      const line = lineOf.get(key)!;
      const aside = (string - (counts.get(key)! + 1) / 2) * SHARE_OF_NOTE * notePitch;
      const x = view.section === undefined ? (line.front.x + aside) * scale : index * STRING_ROOM;
      return canvas.string(x, line, scale, backLength ?? USUAL_BACK);
    });
    return { loops, strings };
  });
  const placed = canvas.placed();
  return {
    width: placed.width,
    height: placed.height,
    others: others.map(({ key, from, to }) => ({ key, from: placed.to(from), to: placed.to(to) })),
    wires: drawn.flatMap(({ loops, strings }) => wiresOf(loops, strings, placed)),
    changes: drawn.flatMap(({ loops, strings }) => changesOf(loops, strings, placed)),
    bridges: drawn.map(({ loops, strings }) => ({
      section: loops.section,
      points: strings.map(({ bridge }) => placed.to(bridge)),
    })),
    notes: drawn.flatMap(({ loops, strings }) =>
      [...new Set(loops.strings.map(({ key }) => key))].map((key) => ({
        key,
        strings: strings
          .filter((_, index) => loops.strings[index]!.key === key)
          .map(({ front, hitch }) => ({ front: placed.to(front), hitch: placed.to(hitch) })),
      })),
    ),
    withoutBack: shown
      .filter(({ strings }) => strings.some(({ backLength }) => backLength === undefined))
      .map(({ section }) => section),
  };
}

const lengthOf = ({ front, back }: Pick<PlanLine, 'front' | 'back'>): number =>
  Math.hypot(back.x - front.x, back.y - front.y);

/** Room of one note along the front of the plan [m]. */
function pitchOf(lines: readonly PlanLine[]): number {
  const inOrder = [...lines].sort((a, b) => a.key - b.key);
  const [first, second] = inOrder;
  return first === undefined || second === undefined ? 0.0139 : second.front.x - first.front.x;
}

/** One string on the way to being placed: front, bridge and hitch pin, and which way it runs. */
interface StringOnCanvas {
  readonly front: DrawnPoint;
  readonly bridge: DrawnPoint;
  readonly hitch: DrawnPoint;
  readonly along: DrawnPoint;
}

/** Room for what stands outside the strings [px]: names and sizes in front, loops behind, half a size's words at the sides. */
const EDGE = { front: 52, hitch: 30, side: 34 };

/** Collects points with y from the front back, and then lays them out on a sheet with y downwards. */
class Canvas {
  private left = Number.POSITIVE_INFINITY;
  private right = Number.NEGATIVE_INFINITY;
  private far = 0;
  constructor(private readonly isUpright: boolean) {}

  at(point: DrawnPoint, scale: number): DrawnPoint {
    return this.seen({ x: point.x * scale, y: point.y * scale });
  }

  string(x: number, line: PlanLine, scale: number, backLength: number): StringOnCanvas {
    const length = lengthOf(line);
    const along = {
      x: (line.back.x - line.front.x) / length,
      y: (line.back.y - line.front.y) / length,
    };
    const at = (distance: number) =>
      this.seen({ x: x + along.x * distance * scale, y: along.y * distance * scale });
    return { front: at(0), bridge: at(length), hitch: at(length + backLength), along };
  }

  private seen(point: DrawnPoint): DrawnPoint {
    this.left = Math.min(this.left, point.x);
    this.right = Math.max(this.right, point.x);
    this.far = Math.max(this.far, point.y);
    return point;
  }

  placed(): Placed {
    const width = Math.max(0, this.right - this.left) + 2 * EDGE.side;
    const height = this.far + EDGE.front + EDGE.hitch;
    const [left, isUpright] = [Number.isFinite(this.left) ? this.left : 0, this.isUpright];
    return {
      width,
      height,
      to: ({ x, y }) => ({
        x: x - left + EDGE.side,
        y: isUpright ? y + EDGE.front : height - EDGE.front - y,
      }),
    };
  }
}

interface Placed {
  readonly width: number;
  readonly height: number;
  readonly to: (point: DrawnPoint) => DrawnPoint;
}

const beyond = ({ hitch, along }: StringOnCanvas, distance: number): DrawnPoint => ({
  x: hitch.x + along.x * distance,
  y: hitch.y + along.y * distance,
});
const middle = (a: DrawnPoint, b: DrawnPoint): DrawnPoint => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
const text = ({ x, y }: DrawnPoint): string => `${x.toFixed(1)} ${y.toFixed(1)}`;

function wiresOf(
  { strings, plan, section }: SectionLoops,
  drawn: readonly StringOnCanvas[],
  { to }: Placed,
): WireOnPlan[] {
  const turns = turnsOf(strings);
  return plan.wires.flatMap(({ joined, strings: [one, other] }): WireOnPlan[] => {
    const first = drawn[one];
    if (first === undefined) return [];
    const base = {
      name: `${section}/${strings[one]!.key}/${strings[one]!.string}`,
      joined,
      isOther: turns[one]! % 2 === 1,
    };
    const up = `M${text(to(first.front))}L${text(to(first.hitch))}`;
    const second = other === undefined ? undefined : drawn[other];
    if (second === undefined) return [{ ...base, path: up, ring: to(beyond(first, RING)) }];
    // A loop is as deep as it is wide, at least so deep that it can be seen.
    const reach = Math.max(7, Math.hypot(second.hitch.x - first.hitch.x, second.hitch.y - first.hitch.y));
    const turn = `C${text(to(beyond(first, reach)))} ${text(to(beyond(second, reach)))} ${text(to(second.hitch))}`;
    return [{ ...base, path: `${up}${turn}L${text(to(second.front))}`, ring: undefined }];
  });
}

/** Radius of the ring that a tied wire ends in [px]. */
export const RING = 3.6;

function changesOf(
  { strings, plan }: SectionLoops,
  drawn: readonly StringOnCanvas[],
  { to }: Placed,
): ChangeOnPlan[] {
  return strings.flatMap(({ size, diameter }, index): ChangeOnPlan[] => {
    const here = drawn[index];
    if (here === undefined || (index > 0 && strings[index - 1]!.size === size)) return [];
    const before = drawn[index - 1];
    const half = STRING_ROOM / 2;
    const [front, behind] =
      before === undefined
        ? [
            { x: here.front.x - half, y: here.front.y },
            { ...beyond(here, 16), x: beyond(here, 16).x - half },
          ]
        : [middle(before.front, here.front), middle(beyond(before, 16), beyond(here, 16))];
    return [
      {
        from: to(front),
        to: to(behind),
        diameter_m: diameter,
        isInsideLoop: plan.changesInsideLoops.includes(index),
      },
    ];
  });
}

function turnsOf(strings: SectionLoops['strings']): number[] {
  let turn = 0;
  return strings.map(({ size }, index) => {
    if (index > 0 && size !== strings[index - 1]!.size) turn += 1;
    return turn;
  });
}

/** The note whose strings pass nearest to a point, looked for along its height. */
export function noteAt(notes: readonly NoteOnPlan[], { x, y }: DrawnPoint): number | undefined {
  let best: { key: number; far: number } | undefined;
  for (const { key, strings } of notes) {
    for (const { front, hitch } of strings) {
      const share = Math.min(1, Math.max(0, (y - front.y) / (hitch.y - front.y || 1)));
      const far = Math.abs(front.x + share * (hitch.x - front.x) - x);
      if (best === undefined || far < best.far) best = { key, far };
    }
  }
  return best?.key;
}

/** What is said of one note: its wire, and with which string each of its strings shares one. */
export function loopWords(
  key: number,
  sections: readonly SectionLoops[],
  unit: LengthUnit,
  language: Language = english,
): string | undefined {
  const { list, say } = language;
  const loops = sections.find(({ strings }) => strings.some((string) => string.key === key));
  if (loops === undefined) return undefined;
  const { strings, plan } = loops;
  const nameOf = (index: number) => {
    const { key: its, string } = strings[index]!;
    return its === key ? say('string {string}', { string }) : `${noteName(its)}/${string}`;
  };
  const wires = plan.wires
    .filter((wire) => wire.strings.some((index) => strings[index]!.key === key))
    .map(({ strings: [one, other] }) =>
      other === undefined
        ? say('{wire} tied', { wire: nameOf(one) })
        : say('{one} with {other}', { one: nameOf(one), other: nameOf(other) }),
    );
  const { diameter } = strings.find((string) => string.key === key)!;
  return `${noteName(key)}, ${wireText(diameter, unit, language)}: ${list(wires)}`;
}
