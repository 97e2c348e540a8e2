import type { CommonOptions } from './workshop.ts';

/** Results go to stdout, as text or as JSON; talk and progress go to stderr. */
export const talk = {
  /** The result: `data` with --json, else `lines`. */
  result(options: Pick<CommonOptions, 'json'>, data: unknown, lines: readonly string[]): void {
    process.stdout.write(
      options.json ? `${JSON.stringify(data)}\n` : lines.map((line) => `${line}\n`).join(''),
    );
  },
  tell(sentence: string): void {
    process.stderr.write(`${sentence}\n`);
  },
};

/** Rows as text with columns side by side; numbers, which start with a digit, a sign or a dot, to the right. */
export function table(header: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const widths = header.map((name, column) =>
    Math.max(name.length, ...rows.map((row) => (row[column] ?? '').length)),
  );
  const isNumeric = header.map((_, column) =>
    rows.every((row) => /^([-+.]?\d[\d.,e+-]*|—|)$/.test(row[column] ?? '')),
  );
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, column) =>
        isNumeric[column] ? cell.padStart(widths[column]!) : cell.padEnd(widths[column]!),
      )
      .join('  ')
      .trimEnd();
  return [line(header), ...rows.map(line)];
}
