import {
  inNewtons,
  inPoundsForce,
  type Language,
  type LengthKind,
  type LengthUnit,
  message,
  type NoteAnalysis,
  newtons,
  otherUnit,
  sayKnown,
} from '@becket/core';
import type { BassQuantity, BassString, Stated } from '@becket/journal';
import { lengthColumns, lengthText } from '../figures/lengths.ts';
import type { Cell, Table, TableColumn, TableRow } from '../page-tree.ts';
import { hasInnerLayer, type OrderLine, statedQuantities, strengthTable } from './order-lines.ts';

const shares: Partial<Record<BassQuantity, readonly [number, number]>> = {
  'speaking-length': [37, 32],
  'core-diameter': [33, 34],
  'inner-layer-diameter': [33, 34],
  'over-all-diameter': [33, 34],
  'bare-front': [30, 28],
  'bare-back': [30, 28],
  'loop-to-winding': [33, 30],
  'winding-length': [37, 32],
  'loop-to-termination': [38, 33],
};

export const bassLengthKind = (quantity: BassQuantity): LengthKind =>
  quantity.endsWith('-diameter') ? 'diameter' : 'length';

/** One row a string, under the name of its section. A figure that is missing is a blank with its reason. */
export function orderTable(lines: readonly OrderLine[], unit: LengthUnit, language: Language): Table {
  const { say } = language;
  const isStated = (quantity: BassQuantity) =>
    quantity !== 'inner-layer-diameter' || lines.some(({ string }) => hasInnerLayer(string));
  const quantities = statedQuantities.filter(([quantity]) => isStated(quantity));
  const columns: TableColumn[] = [
    { heading: say('[of the scale] note'), align: 'left', share: 25 },
    { heading: say('[of a string in its unison] side'), align: 'left', share: 31 },
    { heading: say('[layers, in a very narrow column] lay'), align: 'right', share: 17 },
    ...quantities.flatMap(([quantity, group]) => lengthColumns(say(group), unit, shares[quantity])),
    ...tensionColumns(unit, language),
    {
      group: say('[share of the break load] of core'),
      heading: '%',
      align: 'right',
      share: 26,
      page: 'core/strings/break-share',
    },
  ];
  const rows: TableRow[] = [];
  let section: string | undefined;
  for (const line of lines) {
    const name = line.string.section ?? say('no section');
    if (name !== section) rows.push({ band: say('Section: {name}', { name }) });
    section = name;
    rows.push({ cells: cellsOf(line, quantities, unit, language) });
  }
  return { is: 'table', columns, rows, title: say('Wound strings'), remarks: remarksOf(lines, language) };
}

function cellsOf(
  { string, analysis }: OrderLine,
  quantities: readonly (readonly [BassQuantity, unknown])[],
  unit: LengthUnit,
  language: Language,
): Cell[] {
  return [
    string.note,
    language.say(string.side),
    String(string.layers),
    ...quantities.flatMap(([quantity]) => statedCells(string, quantity, unit, language)),
    ...loadCells(analysis, unit, language),
  ];
}

function tensionColumns(unit: LengthUnit, { say }: Language): TableColumn[] {
  const page = 'core/scale/note-analysis';
  const [first, second] = forcesFrom(unit);
  return [
    { group: say('tension'), heading: first.name, align: 'right', share: 26, page },
    { group: say('tension'), heading: second.name, align: 'right', share: 25, tone: 'quiet', page },
    { group: say('tension'), heading: 'u', align: 'right', share: 18, tone: 'quiet', page },
  ];
}

function loadCells(analysis: NoteAnalysis | undefined, unit: LengthUnit, language: Language): Cell[] {
  if (analysis === undefined) return [{ absent: language.say('not computed'), across: 4 }];
  const { tension, standardUncertainties, breakShare, isWithinStrengthTable } = analysis;
  const [first, second] = forcesFrom(unit);
  return [
    language.fixed(first.in(tension), 0),
    language.fixed(second.in(tension), 0),
    standardUncertainties === undefined
      ? ''
      : language.fixed(first.in(newtons(standardUncertainties.tension)), 0),
    `${language.fixed(breakShare * 100, 0)}${isWithinStrengthTable ? '' : '*'}`,
  ];
}

const inForceUnits = [
  { name: 'N', in: inNewtons },
  { name: 'lbf', in: inPoundsForce },
] as const;
const forcesFrom = (unit: LengthUnit) =>
  unit === 'mm' ? inForceUnits : ([inForceUnits[1], inForceUnits[0]] as const);

/** Marks behind a figure that nobody read off the string. */
const marks: Readonly<Record<Extract<Stated, { is: 'length' }>['from'], string>> = {
  read: '',
  'chosen scale': '',
  'worked out': '°',
};

/** A figure in both units; *none* and *does not apply* as such; anything else is a blank to fill in. */
export function statedCells(
  string: BassString,
  quantity: BassQuantity,
  unit: LengthUnit,
  language: Language,
): Cell[] {
  const stated = string.stated[quantity];
  if (stated.is === 'length') {
    const kind = bassLengthKind(quantity);
    return [
      `${lengthText(stated.value, unit, kind, language)}${marks[stated.from]}`,
      lengthText(stated.value, otherUnit(unit), kind, language),
    ];
  }
  if (stated.why === 'none' || stated.why === 'does not apply')
    return [{ absent: language.say(stated.why), across: 2 }];
  const why = stated.why === 'not read' ? message('[beside a line to write on] not read') : stated.why;
  return [{ blank: language.say(why), across: 2 }];
}

function remarksOf(lines: readonly OrderLine[], language: Language): string[] {
  const { say } = language;
  const isOutside = lines.some(({ analysis }) => analysis?.isWithinStrengthTable === false);
  return [
    say(
      'Side: as seen from the keyboard, left is the bass side. Lay: layers of winding. Speaking length: front termination to bridge pin. Bare ends: unwound, inside the speaking length. Lengths from the loop are from its inside, where it lies on the hitch pin. ° worked out from other readings.',
    ),
    [
      say(
        'Tension of one string at its pitch: {tension} (steel core, copper winding, bare ends counted as bare); u: its standard uncertainty, with what is common for instruments and materials. Of core: tension as a share of the break load of the core by {table} ({share}).',
        {
          tension: 'core/scale/note-analysis',
          share: 'core/strings/break-share',
          table: sayKnown(strengthTable.name, language),
        },
      ),
      sayKnown(strengthTable.remark, language),
    ].join(' '),
    ...(isOutside
      ? [say('* The core lies outside the range of that table; the figure is an extension of it.')]
      : []),
  ];
}
