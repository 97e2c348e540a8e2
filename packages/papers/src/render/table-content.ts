import type { Content, TableCell } from 'pdfmake/interfaces';
import type { Cell, PageTree, Table, TableColumn, TableRow } from '../page-tree.ts';
import { ink, quiet, rule, shade, textSizes } from './look.ts';

/** Left and right of a cell; less in a table of many columns. */
const cellPadding = (columns: number): number => (columns > 16 ? 2 : 3);
/** Above and below what stands in a cell. */
const cellRoom = 2;
const hairLine = 0.4;

/**
 * A table that keeps its heads with its first row, each row whole, and the name of a run of rows with the first row of it, and that
 * repeats its heads on every page.
 */
export function tableContent(table: Table, textSize: PageTree['textSize'], width: number): Content {
  const { columns } = table;
  const fontSize = textSizes[textSize ?? 'usual'].table;
  const shares = columns.reduce((sum, column) => sum + column.share, 0);
  const padding = cellPadding(columns.length);
  const room = width - columns.length * 2 * padding;
  const widths = columns.map((column) => (room * column.share) / shares);
  const hasGroups = columns.some((column) => column.group !== undefined);
  const titles = titleHeads(table);
  const heads = [...titles, ...(hasGroups ? [groupHeads(columns)] : []), columnHeads(columns)];
  const isRule = (line: number) => line === titles.length || line === heads.length;
  return {
    table: {
      headerRows: heads.length,
      keepWithHeaderRows: 1,
      dontBreakRows: true,
      widths,
      // pdfmake writes into the rows it is handed; these are made anew on every call.
      body: [...heads, ...rowsOf(table, widths, padding)],
    },
    layout: {
      ...tableLayout(padding),
      hLineWidth: (line: number) => (isRule(line) ? 1 : line < heads.length ? 0 : hairLine),
      hLineColor: (line: number) => (isRule(line) ? ink : rule),
    },
    fontSize,
    lineHeight: 1.1,
    margin: [0, 2, 0, 12],
  };
}

/** Title and remarks as one heading row, so that they stay with the table and stand on every page of it. */
function titleHeads({ title, remarks = [], columns }: Table): TableCell[][] {
  if (title === undefined && remarks.length === 0) return [];
  const head: TableCell = {
    stack: [
      ...(title === undefined ? [] : [{ text: title, bold: true, fontSize: 9.5 }]),
      ...remarks.map((text) => ({ text, fontSize: 7.5, color: quiet })),
    ],
  };
  return [acrossAll(head, columns)];
}

function groupHeads(columns: readonly TableColumn[]): TableCell[] {
  return columns.map((column, index): TableCell => {
    if (column.group === undefined) return { text: '' };
    if (columns[index - 1]?.group === column.group) return {};
    let colSpan = 1;
    while (columns[index + colSpan]?.group === column.group) colSpan += 1;
    return { text: column.group, bold: true, colSpan, alignment: 'center', lineHeight: 1 };
  });
}

function columnHeads(columns: readonly TableColumn[]): TableCell[] {
  return columns.map(
    (column): TableCell => ({
      text: column.heading,
      bold: column.tone !== 'quiet',
      color: column.tone === 'quiet' ? quiet : ink,
      alignment: alignmentOf(column),
      lineHeight: 1,
    }),
  );
}

/** A band and the row below it are set as one, since a row is all that pdfmake keeps whole. */
function rowsOf({ rows, columns }: Table, widths: number[], padding: number): TableCell[][] {
  const set: TableCell[][] = [];
  for (let index = 0; index < rows.length; index += 1) {
    const [row, next] = [rows[index]!, rows[index + 1]];
    if (!('band' in row)) set.push(rowOf(row, columns));
    else if (next === undefined || 'band' in next) set.push(bandOf(row, columns));
    else {
      set.push(
        acrossAll(
          {
            table: { widths, body: [bandOf(row, columns), rowOf(next, columns)] },
            layout: tableLayout(padding),
            margin: [-padding, -cellRoom, -padding, -cellRoom],
          } as TableCell,
          columns,
        ),
      );
      index += 1;
    }
  }
  return set;
}

const tableLayout = (padding: number) => ({
  hLineWidth: (line: number) => (line === 1 ? hairLine : 0),
  hLineColor: () => rule,
  vLineWidth: () => 0,
  paddingLeft: () => padding,
  paddingRight: () => padding,
  paddingTop: () => cellRoom,
  paddingBottom: () => cellRoom,
});

const bandOf = ({ band }: { readonly band: string }, columns: readonly TableColumn[]): TableCell[] =>
  acrossAll({ text: band, bold: true, fillColor: shade }, columns);

const acrossAll = (cell: TableCell, columns: readonly TableColumn[]): TableCell[] => [
  { ...(cell as object), colSpan: columns.length } as TableCell,
  ...columns.slice(1).map((): TableCell => ({})),
];

function rowOf(row: Exclude<TableRow, { band: string }>, columns: readonly TableColumn[]): TableCell[] {
  const cells: TableCell[] = [];
  for (const cell of row.cells) {
    const column = columns[cells.length];
    if (column === undefined) break;
    const across = typeof cell === 'string' ? 1 : (cell.across ?? 1);
    cells.push(cellOf(cell, column, { colSpan: across, isSum: row.tone === 'sum' }));
    for (let covered = 1; covered < across; covered += 1) cells.push({});
  }
  while (cells.length < columns.length) cells.push('');
  return cells;
}

function cellOf(
  cell: Cell,
  column: TableColumn,
  { colSpan, isSum }: { readonly colSpan: number; readonly isSum: boolean },
): TableCell {
  const alignment = colSpan > 1 ? 'center' : alignmentOf(column);
  if (typeof cell === 'string')
    return { text: cell, alignment, bold: isSum, color: column.tone === 'quiet' && !isSum ? quiet : ink };
  const reason = {
    text: 'absent' in cell ? cell.absent : cell.blank,
    italics: true,
    fontSize: 7.5,
    color: quiet,
  };
  if ('absent' in cell) return { ...reason, alignment, colSpan };
  return { text: [{ text: '____ ' }, reason], alignment, colSpan };
}

const alignmentOf = ({ align }: TableColumn) => (align === 'centre' ? 'center' : align);
