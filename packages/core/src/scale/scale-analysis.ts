import { grouped } from '../lists/index.ts';
import { type Newtons, newtons } from '../units/index.ts';
import { type AnalysisOptions, analyseNote, type NoteAnalysis } from './note-analysis.ts';
import { COMMON_INPUTS } from './note-inputs.ts';
import type { ScaleNote } from './scale.ts';

/** The strings of a section or bridge and what they pull together. */
export interface LoadShare {
  readonly name: string;
  /** Key numbers of its lowest and highest note; undefined when there is none. */
  readonly firstKey: number | undefined;
  readonly lastKey: number | undefined;
  readonly notes: number;
  readonly strings: number;
  readonly load: Newtons;
  /** Standard uncertainty of the load; undefined when uncertainties were left out. */
  readonly loadUncertainty: Newtons | undefined;
  /** Force of these strings on the bridge, over the notes whose bearing angle was read; undefined where none was. */
  readonly bearing: BearingSum | undefined;
}

/** A sum of bearing forces, and how much of the whole it covers. */
export interface BearingSum {
  readonly force: Newtons;
  readonly standardUncertainty: Newtons | undefined;
  /** Notes whose bearing angle was read; the others are not in the sum. */
  readonly notes: number;
}

export interface ScaleAnalysis {
  /** In the order of the keys. */
  readonly notes: readonly NoteAnalysis[];
  /** In the order of their lowest key. */
  readonly sections: readonly LoadShare[];
  readonly bridges: readonly LoadShare[];
  /** Sum of all string tensions: what the plate bears, but for the directions of the strings. */
  readonly total: Newtons;
  readonly totalUncertainty: Newtons | undefined;
  readonly totalStrings: number;
}

/**
 * Analyses a whole compass: every note, and the load by section, by bridge and in all.
 *
 *     total = Σ strings · T        u² = Σ_common (Σ_notes Z)² + Σ_own Σ_notes Z²
 *
 * @param notes    in any order, each key at most once; notes that are missing are left out of the sums
 * @param options  strength table, modulus, assumed uncertainties
 * @returns notes in the order of the keys, loads, total
 *
 * Error: diameters and lengths are taken to err independently from note to note; pitch, densities, modulus and strength err
 * alike over the whole piano, so their contributions Z are added with their signs first.
 * Throws: RangeError when a key occurs twice or a string cannot be analysed.
 * Source: JCGM 100:2008, 5.2.2, for inputs in common.
 */
export function analyseScale(notes: readonly ScaleNote[], options: AnalysisOptions = {}): ScaleAnalysis {
  return totalsOf(notes.map((note) => analyseNote(note, options)));
}

/** The same analysis after one note has changed: only that note is worked out anew, the sums are added up again. */
export function reanalyseNote(
  analysis: ScaleAnalysis,
  note: ScaleNote,
  options: AnalysisOptions = {},
): ScaleAnalysis {
  const others = analysis.notes.filter((analysed) => analysed.key !== note.key);
  return totalsOf([...others, analyseNote(note, options)]);
}

/** Adds up notes that have been analysed. */
export function totalsOf(analysedNotes: readonly NoteAnalysis[]): ScaleAnalysis {
  const notes = [...analysedNotes].sort((a, b) => a.key - b.key);
  notes.forEach((analysed, index) => {
    if (analysed.key === notes[index - 1]?.key) {
      throw new RangeError(
        `Cannot analyse a scale as each key may occur once: key ${analysed.key} occurs more than once`,
      );
    }
  });
  const all = loadOf('all', notes);
  return {
    notes,
    sections: loadsBy(notes, (note) => note.section),
    bridges: loadsBy(notes, (note) => note.bridge),
    total: all.load,
    totalUncertainty: all.loadUncertainty,
    totalStrings: all.strings,
  };
}

function loadsBy(notes: readonly NoteAnalysis[], nameOf: (note: ScaleNote) => string): LoadShare[] {
  return [...grouped(notes, ({ note }) => nameOf(note))].map(([name, own]) => loadOf(name, own));
}

function loadOf(name: string, notes: readonly NoteAnalysis[]): LoadShare {
  let load = 0;
  let strings = 0;
  for (const analysed of notes) {
    load += analysed.unisonTension;
    strings += analysed.note.strings;
  }
  return {
    name,
    firstKey: notes[0]?.key,
    lastKey: notes[notes.length - 1]?.key,
    notes: notes.length,
    strings,
    load: newtons(load),
    loadUncertainty: sumUncertainty(notes.map((note) => note.contributions?.unisonTension)),
    bearing: bearingSum(notes),
  };
}

function bearingSum(notes: readonly NoteAnalysis[]): BearingSum | undefined {
  const bearings = notes.flatMap(({ bearing }) => (bearing === undefined ? [] : [bearing]));
  if (bearings.length === 0) return undefined;
  return {
    force: newtons(bearings.reduce((sum, bearing) => sum + bearing.force, 0)),
    standardUncertainty: sumUncertainty(bearings.map(({ contributions }) => contributions)),
    notes: bearings.length,
  };
}

/** Uncertainty of a sum over notes, whose common inputs err alike and whose own inputs do not. */
function sumUncertainty(
  terms: readonly (Readonly<Record<string, number>> | undefined)[],
): Newtons | undefined {
  let ownSquares = 0;
  const common = new Map<string, number>();
  for (const contributions of terms) {
    if (contributions === undefined) return undefined;
    for (const [input, contribution] of Object.entries(contributions)) {
      if (COMMON_INPUTS.has(input)) common.set(input, (common.get(input) ?? 0) + contribution);
      else ownSquares += contribution ** 2;
    }
  }
  let commonSquares = 0;
  for (const contribution of common.values()) commonSquares += contribution ** 2;
  return newtons(Math.sqrt(ownSquares + commonSquares));
}
