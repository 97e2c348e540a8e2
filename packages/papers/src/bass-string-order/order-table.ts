import { inNewtons, inPoundsForce, type NoteAnalysis, newtons } from '@becket/core';
import type { AsFoundNote, ReadingQuantityName } from '@becket/journal';
import { type LengthUnit, lengthCells, lengthColumns } from '../figures/lengths.ts';
import { lengthKindOf, noFigureText } from '../figures/readings.ts';
import type { Cell, Table, TableColumn, TableRow } from '../page-tree.ts';
import { hasInnerLayer, type OrderLine, orderedQuantities, strengthTable } from './order-lines.ts';

const shares: Partial<Record<ReadingQuantityName, readonly [number, number]>> = {
  'speaking-length': [38, 33],
  'bare-front': [32, 30],
  'bare-back': [32, 30],
  'loop-to-winding': [34, 31],
  'winding-length': [38, 33],
};

/** One row a wound note, under the name of its section. A figure that is missing is a blank with its reason. */
export function orderTable(lines: readonly OrderLine[], unit: LengthUnit): Table {
  const isStated = (quantity: ReadingQuantityName) =>
    quantity !== 'inner-layer-diameter' || lines.some(({ note }) => hasInnerLayer(note));
  const quantities = orderedQuantities.filter(([quantity]) => isStated(quantity));
  const columns: TableColumn[] = [
    { heading: 'key', align: 'right', share: 18, tone: 'quiet' },
    { heading: 'note', align: 'left', share: 25 },
    { heading: 'wanted', align: 'right', share: 41 },
    { heading: 'layers', align: 'right', share: 37 },
    ...quantities.flatMap(([quantity, group]) => lengthColumns(group, unit, shares[quantity])),
    ...tensionColumns(unit),
    { group: 'of core', heading: '%', align: 'right', share: 28, page: 'core/strings/break-share' },
  ];
  const rows: TableRow[] = [];
  let section: string | undefined;
  for (const line of lines) {
    const name = line.note.section?.section ?? 'no section';
    if (name !== section) rows.push({ band: `Section: ${name}` });
    section = name;
    rows.push({ cells: cellsOf(line, quantities, unit) });
  }
  return { is: 'table', columns, rows, title: 'Wound strings', remarks: remarksOf(lines) };
}

function cellsOf(
  { note, analysis }: OrderLine,
  quantities: readonly (readonly [ReadingQuantityName, string])[],
  unit: LengthUnit,
): Cell[] {
  return [
    String(note.key),
    note.note,
    note.strings === undefined ? { blank: 'not said' } : String(note.strings),
    String(note.layers),
    ...quantities.flatMap(([quantity]) => orderedCells(note, quantity, unit)),
    ...loadCells(analysis, unit),
  ];
}

function tensionColumns(unit: LengthUnit): TableColumn[] {
  const page = 'core/scale/note-analysis';
  const [first, second] = forcesFrom(unit);
  return [
    { group: 'tension', heading: first.name, align: 'right', share: 28, page },
    { group: 'tension', heading: second.name, align: 'right', share: 26, tone: 'quiet', page },
    { group: 'tension', heading: `u ${first.name}`, align: 'right', share: 26, tone: 'quiet', page },
  ];
}

function loadCells(analysis: NoteAnalysis | undefined, unit: LengthUnit): Cell[] {
  if (analysis === undefined) return [{ absent: 'not computed', across: 4 }];
  const { tension, standardUncertainties, breakShare, isWithinStrengthTable } = analysis;
  const [first, second] = forcesFrom(unit);
  return [
    first.in(tension).toFixed(0),
    second.in(tension).toFixed(0),
    standardUncertainties === undefined ? '' : first.in(newtons(standardUncertainties.tension)).toFixed(0),
    `${(breakShare * 100).toFixed(0)}${isWithinStrengthTable ? '' : '*'}`,
  ];
}

const inForceUnits = [
  { name: 'N', in: inNewtons },
  { name: 'lbf', in: inPoundsForce },
] as const;
const forcesFrom = (unit: LengthUnit) =>
  unit === 'mm' ? inForceUnits : ([inForceUnits[1], inForceUnits[0]] as const);

/** A figure in both units; *none* and *does not apply* as such; anything else is a blank to fill in. */
function orderedCells(note: AsFoundNote, quantity: ReadingQuantityName, unit: LengthUnit): Cell[] {
  const figure = note.figures[quantity];
  if (figure !== undefined) return lengthCells(figure.value, lengthKindOf(quantity), unit);
  if (quantity === 'inner-layer-diameter' && !hasInnerLayer(note))
    return [{ absent: 'does not apply', across: 2 }];
  const absence = note.absences[quantity];
  if (absence === 'none' || absence === 'does not apply') return [{ absent: absence, across: 2 }];
  return [{ blank: noFigureText(absence), across: 2 }];
}

function remarksOf(lines: readonly OrderLine[]): string[] {
  const isOutside = lines.some(({ analysis }) => analysis?.isWithinStrengthTable === false);
  return [
    'Wanted: all strings of the note. Speaking length: front termination to bridge pin. Bare ends: unwound, inside the speaking length.',
    `Tension of one string at its pitch: core/scale/note-analysis (steel core, copper winding, bare ends counted as bare); u: its standard uncertainty, with what is common for instruments and materials. Of core: tension as a share of the break load of the core by ${strengthTable.name} (core/strings/break-share). ${strengthTable.remark}`,
    ...(isOutside
      ? ['* The core lies outside the range of that table; the figure is an extension of it.']
      : []),
  ];
}
