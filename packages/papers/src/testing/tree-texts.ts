import type { Cell, PageTree, TableRow } from '../page-tree.ts';
import { withoutSpaces } from './read-pdf.ts';

const cellText = (cell: Cell): string =>
  typeof cell === 'string' ? cell : 'absent' in cell ? cell.absent : `____${cell.blank}`;
const rowText = (row: TableRow): string => ('band' in row ? row.band : row.cells.map(cellText).join(''));

/** Every text of a tree as it must be found again on its pages, one for each row, item or line, without spaces. */
export function treeTexts({ blocks }: PageTree): string[] {
  return blocks
    .flatMap((block): readonly string[] => {
      switch (block.is) {
        case 'heading':
        case 'paragraph':
          return [block.text];
        case 'list':
          return block.items;
        case 'facts':
          return block.rows.map(({ name, value }) => name + value);
        case 'box':
          return [block.title, ...block.texts];
        case 'table':
          return [...(block.title === undefined ? [] : [block.title]), ...block.rows.map(rowText)];
        case 'chart':
          return [block.title, block.words, ...block.x.ticks.map(({ text }) => text)];
        case 'photos':
          return block.photos.flatMap(({ title, lines }) => [title, ...lines]);
        case 'signature lines':
          return block.names;
        default:
          return [];
      }
    })
    .map(withoutSpaces);
}
