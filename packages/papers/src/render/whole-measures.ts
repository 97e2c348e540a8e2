const unit = '%|mm|cm|m|in|ft|N·m|in·lbf|kN|N|lbf|Hz|kg|g|h|min|°C';
/** A number, one space and its unit, with what hangs on either side of them. */
const measure = new RegExp(`(\\S*\\d) (${unit})(?![\\p{L}\\p{N}·])(?=(\\S*))`, 'gu');

/**
 * A text whose numbers are not torn from their units at the end of a line: U+00A0 stands between them. Where more than `most`
 * letters would then have to stand in one line, which has no room for them, they may still be parted.
 *
 * @example wholeMeasures('63 mm') === '63\u00a0mm'  // = true
 * @example wholeMeasures('of 2 notes')  // = of 2 notes
 * @example wholeMeasures('(7,163 mm)', 9)  // = (7,163 mm)
 */
export function wholeMeasures(text: string, most = Number.POSITIVE_INFINITY): string {
  return text.replace(measure, (whole, number: string, of: string, after: string) =>
    `${whole}${after}`.length > most ? whole : `${number}\u00a0${of}`,
  );
}

/** Wider than the widest usual letter on the average of a number and its unit, in ems of the paper's fonts. */
const letter_em = 0.75;

/** The same for everything a page is set from. A column of a table is as wide as it is, whatever stands in it. */
export function withWholeMeasures<Content>(content: Content, most?: number): Content {
  return whole(content, most) as Content;
}

function whole(content: unknown, most?: number): unknown {
  if (Array.isArray(content)) return content.map((one) => whole(one, most));
  if (typeof content !== 'object' || content === null) return content;
  const node: Record<string, unknown> = { ...content };
  if (typeof node.text === 'string') node.text = wholeMeasures(node.text, most);
  for (const name of ['text', 'stack', 'columns', 'ul'])
    if (Array.isArray(node[name])) node[name] = whole(node[name], most);
  if (isTable(node.table)) {
    const { widths, body } = node.table;
    const fontSize = typeof node.fontSize === 'number' ? node.fontSize : largestFont;
    node.table = {
      ...node.table,
      body: body.map((row) =>
        row.map((cell, column) => {
          const across = (cell as { colSpan?: number } | undefined)?.colSpan ?? 1;
          const width = widths.slice(column, column + across).reduce((sum, one) => sum + one, 0);
          return whole(cell, Math.floor(width / (letter_em * fontSize)));
        }),
      ),
    };
  }
  return node;
}

/** Of running text; see `textSizes`. */
const largestFont = 13;

interface SetTable {
  readonly widths: readonly number[];
  readonly body: readonly (readonly unknown[])[];
}

const isTable = (table: unknown): table is SetTable =>
  typeof table === 'object' && table !== null && 'widths' in table && 'body' in table;
