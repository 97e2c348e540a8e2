import {
  beatTable,
  type Hertz,
  type LoadShare,
  type Metres,
  message,
  type NoteAnalysis,
  type PlainString,
  type ScaleAnalysis,
  type SoundingKey,
  stretchedTuning,
  totalsOf,
  type WoundString,
} from '@becket/core';

/** One note in two scales; a side is undefined where it cannot be computed. */
export interface NoteInBoth {
  readonly key: number;
  readonly before: NoteAnalysis | undefined;
  readonly after: NoteAnalysis | undefined;
  /** True where a wire differs by more than half a size, or only one side is known. */
  readonly isChanged: boolean;
}

/** A load in two scales, of the notes that both have: a note that is known in one only would pass for a change. */
export interface LoadInBoth {
  readonly of: 'all' | 'section' | 'bridge';
  readonly name: string;
  readonly before: Pick<LoadShare, 'load' | 'loadUncertainty' | 'bearing'> | undefined;
  readonly after: Pick<LoadShare, 'load' | 'loadUncertainty' | 'bearing'> | undefined;
}

/** An interval over a break, as it beats in two scales. */
export interface BeatInBoth {
  readonly interval: string;
  readonly lowerKey: number;
  readonly upperKey: number;
  /** Beats a second, above zero wide; undefined where a note is missing. */
  readonly before: Hertz | undefined;
  readonly after: Hertz | undefined;
}

/** One size of wire that a scale needs. */
export interface WireNeeded {
  readonly use: 'plain' | 'core' | 'winding';
  readonly diameter: Metres;
  readonly strings: number;
  readonly keys: readonly number[];
}

export interface ScaleComparison {
  /** Bass to treble; every note of either. */
  readonly notes: readonly NoteInBoth[];
  readonly changed: readonly NoteInBoth[];
  readonly loads: readonly LoadInBoth[];
  /** Keys just above a change of kind or bridge, in the scale before. */
  readonly breaks: readonly number[];
  readonly beats: readonly BeatInBoth[];
  /** How the pitches for the beats were laid: stretched to each scale's own B, or equal where too few notes are known. */
  readonly tunedBy: 'stretch' | 'equal temperament';
  readonly wires: readonly WireNeeded[];
}

interface SameWithin {
  /** Of plain wire and cores. */
  readonly steel: number;
  readonly winding: number;
  readonly bareEnd: number;
}
/** Diameters that differ by less are one wire: a tenth of what the best micrometer shows. */
const SAME_WIRE: SameWithin = { steel: 5e-8, winding: 5e-8, bareEnd: 1e-4 };
/**
 * Half a step between two sizes, so that worn wire which is replaced by the size it had is no change. Steel steps by 25 µm
 * in both ways of numbering, winding wire by 20 µm.
 */
const SAME_SIZE: SameWithin = { steel: 12e-6, winding: 9e-6, bareEnd: 2e-3 };

/** Whether two strings are made of the same wires, bare ends alike to a tenth of a millimetre. */
export function hasSameWires(
  one: PlainString | WoundString,
  other: PlainString | WoundString,
  within: SameWithin = SAME_WIRE,
): boolean {
  const near = (a: number, b: number, tolerance = within.steel) => Math.abs(a - b) < tolerance;
  if (one.kind === 'plain' || other.kind === 'plain')
    return one.kind === 'plain' && other.kind === 'plain' && near(one.diameter, other.diameter);
  return (
    near(one.coreDiameter, other.coreDiameter) &&
    one.layers.length === other.layers.length &&
    one.layers.every((layer, index) => {
      const its = other.layers[index]!;
      return (
        near(layer.wireDiameter, its.wireDiameter, within.winding) &&
        near(layer.bareFront, its.bareFront, within.bareEnd) &&
        near(layer.bareBack, its.bareBack, within.bareEnd)
      );
    })
  );
}

/** Two scales of one piano, side by side. */
export function scaleComparison(
  before: ScaleAnalysis,
  after: ScaleAnalysis,
  referencePitch: Hertz,
): ScaleComparison {
  const olds = new Map(before.notes.map((note) => [note.key, note]));
  const news = new Map(after.notes.map((note) => [note.key, note]));
  const keys = [...new Set([...olds.keys(), ...news.keys()])].sort((a, b) => a - b);
  const notes = keys.map((key): NoteInBoth => {
    const [old, its] = [olds.get(key), news.get(key)];
    const isSame =
      old !== undefined && its !== undefined && hasSameWires(old.note.string, its.note.string, SAME_SIZE);
    return { key, before: old, after: its, isChanged: !isSame };
  });
  const breaks = breaksOf(before);
  const [tunedBefore, tunedAfter] = [tuned(before, referencePitch), tuned(after, referencePitch)];
  const isStretched = tunedBefore !== undefined && tunedAfter !== undefined;
  return {
    notes,
    changed: notes.filter(({ isChanged }) => isChanged),
    loads: loadsInBoth(
      totalsOf(before.notes.filter(({ key }) => news.has(key))),
      totalsOf(after.notes.filter(({ key }) => olds.has(key))),
    ),
    breaks,
    beats: beatsOver(
      breaks,
      isStretched ? tunedBefore : inEqualTemperament(before),
      isStretched ? tunedAfter : inEqualTemperament(after),
    ),
    tunedBy: isStretched ? 'stretch' : 'equal temperament',
    wires: wiresNeeded(after),
  };
}

/** Keys whose string is of another kind, or on another bridge, than that of the note below. */
export function breaksOf({ notes }: Pick<ScaleAnalysis, 'notes'>): number[] {
  return notes.flatMap(({ key, note }, index) => {
    const below = notes[index - 1]?.note;
    if (below === undefined || below.key !== key - 1) return [];
    return below.string.kind !== note.string.kind || below.bridge !== note.bridge ? [key] : [];
  });
}

/** Every wire of a scale by use and size, thick to thin. */
export function wiresNeeded({ notes }: Pick<ScaleAnalysis, 'notes'>): WireNeeded[] {
  const wires = new Map<
    string,
    { use: WireNeeded['use']; diameter: Metres; strings: number; keys: number[] }
  >();
  const add = (use: WireNeeded['use'], diameter: Metres, strings: number, key: number) => {
    const name = `${use}/${Math.round(diameter * 1e7)}`;
    const known = wires.get(name);
    if (known === undefined) wires.set(name, { use, diameter, strings, keys: [key] });
    else {
      known.strings += strings;
      if (known.keys.at(-1) !== key) known.keys.push(key);
    }
  };
  for (const { key, note } of notes) {
    if (note.string.kind === 'plain') add('plain', note.string.diameter, note.strings, key);
    else {
      add('core', note.string.coreDiameter, note.strings, key);
      for (const { wireDiameter } of note.string.layers) add('winding', wireDiameter, note.strings, key);
    }
  }
  const order = ['plain', 'core', 'winding'];
  return [...wires.values()].sort(
    (a, b) => order.indexOf(a.use) - order.indexOf(b.use) || b.diameter - a.diameter,
  );
}

/**
 * First partials of a scale where its own inharmonicity would have them.
 *
 * A note that is missing between two others counts with B on the straight line between their logarithms, so that one gap does
 * not leave a whole piano untuned; it is not among the notes that come back.
 * @returns undefined where the compass is too short for a stretch, or A4 is not in it
 */
export function tuned(
  { notes }: Pick<ScaleAnalysis, 'notes'>,
  referencePitch: Hertz,
): SoundingKey[] | undefined {
  try {
    const { targets } = stretchedTuning(withoutGaps(notes), { referencePitch });
    const frequencies = new Map(targets.map(({ key, frequency }) => [key, frequency]));
    return notes.map(({ key, inharmonicity }) => ({
      key,
      firstPartial: frequencies.get(key)!,
      inharmonicity,
    }));
  } catch (error) {
    // A stretch needs 25 notes with A4 among them.
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function withoutGaps(notes: ScaleAnalysis['notes']): { key: number; inharmonicity: number }[] {
  return notes.flatMap(({ key, inharmonicity }, index) => {
    const below = notes[index - 1];
    const gap = below === undefined ? 0 : key - below.key - 1;
    const filled = Array.from({ length: gap }, (_, place) => ({
      key: below!.key + place + 1,
      inharmonicity:
        below!.inharmonicity * (inharmonicity / below!.inharmonicity) ** ((place + 1) / (gap + 1)),
    }));
    return [...filled, { key, inharmonicity }];
  });
}

/** First partials at equal temperament: where a compass with gaps cannot be stretched. */
export function inEqualTemperament({ notes }: Pick<ScaleAnalysis, 'notes'>): SoundingKey[] {
  return notes.map(({ key, note, inharmonicity }) => ({ key, firstPartial: note.frequency, inharmonicity }));
}

/**
 * How uneven tension runs from note to note: root mean square of the second difference of ln T, a share. Only over three
 * neighbouring keys with as many strings each: where one string becomes two, tension steps on purpose.
 * @returns undefined where no three such notes stand side by side
 */
export function tensionUnevenness({ notes }: Pick<ScaleAnalysis, 'notes'>): number | undefined {
  let [sum, count] = [0, 0];
  for (let index = 1; index + 1 < notes.length; index += 1) {
    const [low, here, high] = [notes[index - 1]!, notes[index]!, notes[index + 1]!];
    if (high.key - low.key !== 2 || new Set([low, here, high].map(({ note }) => note.strings)).size > 1)
      continue;
    sum += Math.log((low.tension * high.tension) / here.tension ** 2) ** 2;
    count += 1;
  }
  return count === 0 ? undefined : Math.sqrt(sum / count);
}

function beatsOver(
  breaks: readonly number[],
  before: readonly SoundingKey[],
  after: readonly SoundingKey[],
): BeatInBoth[] {
  const heard = [
    { name: 'major third', semitones: 4, pairs: [[5, 4]] },
    { name: 'fifth', semitones: 7, pairs: [[3, 2]] },
    { name: 'octave', semitones: 12, pairs: [[4, 2]] },
  ] as const;
  const name = (interval: string, lowerKey: number) => `${interval}/${lowerKey}`;
  const ratesOf = (notes: readonly SoundingKey[]) =>
    new Map(beatTable(notes, heard).map(({ interval, lowerKey, rate }) => [name(interval, lowerKey), rate]));
  const [olds, news] = [ratesOf(before), ratesOf(after)];
  return heard.flatMap(({ name: interval, semitones }) => {
    const lowers = new Set<number>();
    for (const above of breaks) {
      // Thirds are heard as a row, so one that lies whole on each side belongs to it.
      const beside = interval === 'major third' ? 1 : 0;
      for (let lower = above - semitones - beside; lower < above + beside; lower += 1) lowers.add(lower);
    }
    return [...lowers]
      .sort((a, b) => a - b)
      .map((lowerKey) => ({
        interval,
        lowerKey,
        upperKey: lowerKey + semitones,
        before: olds.get(name(interval, lowerKey)),
        after: news.get(name(interval, lowerKey)),
      }))
      .filter((beat) => beat.before !== undefined || beat.after !== undefined);
  });
}

function loadsInBoth(before: ScaleAnalysis, after: ScaleAnalysis): LoadInBoth[] {
  const shares = (of: 'section' | 'bridge', olds: readonly LoadShare[], news: readonly LoadShare[]) =>
    [...new Set([...olds, ...news].map(({ name }) => name))].map(
      (name): LoadInBoth => ({
        of,
        name,
        before: olds.find((one) => one.name === name),
        after: news.find((one) => one.name === name),
      }),
    );
  const total = ({ total: load, totalUncertainty: loadUncertainty }: ScaleAnalysis) => ({
    load,
    loadUncertainty,
    bearing: undefined,
  });
  return [
    { of: 'all', name: message('all strings'), before: total(before), after: total(after) },
    ...shares('section', before.sections, after.sections),
    ...shares('bridge', before.bridges, after.bridges),
  ];
}
