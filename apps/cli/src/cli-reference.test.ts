import { readFileSync } from 'node:fs';
import { readingQuantityNames, readUnits } from '@becket/journal';
import { columnMappingSchema, MOST_COLUMNS, MOST_ROWS, parseCellChanges } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { exitStatus } from './exit-status.ts';
import { becketProgram, commandNames } from './program.ts';

const page = (name: string): string =>
  readFileSync(new URL(`../../../docs/reference/${name}`, import.meta.url), 'utf8');

describe('docs/reference/cli.md', () => {
  const text = page('cli.md');

  it('has a heading for every command, and no other', () => {
    const headings = [...text.matchAll(/^### `becket ([a-z-]+)/gm)].map(([, name]) => name);
    expect([...headings].sort()).toEqual([...commandNames].sort());
  });

  it('has every option of every command', async () => {
    const program = await becketProgram([]);
    const all = [program, ...program.commands, ...program.commands.flatMap(({ commands }) => commands)];
    for (const command of all)
      for (const { long } of command.options) expect(text, `${command.name()} ${long}`).toContain(`${long}`);
  });

  it('has every command that belongs to another', async () => {
    const program = await becketProgram([]);
    for (const command of program.commands)
      for (const part of command.commands) expect(text).toContain(`| \`${command.name()} ${part.name()}`);
  });

  it('has every exit status', () => {
    const listed = [...text.matchAll(/^\| (\d+) \|/gm)].map(([, status]) => Number(status));
    expect(listed).toEqual(Object.values(exitStatus));
  });
});

describe('docs/reference/csv-import.md', () => {
  const text = page('csv-import.md');

  it('names every quantity, every unit and the limits', () => {
    for (const quantity of readingQuantityNames) expect(text).toContain(`\`${quantity}\``);
    for (const unit of readUnits.filter((one) => one !== 'Hz')) expect(text).toContain(`\`${unit}\``);
    expect(text).toContain(`${MOST_ROWS} rows, ${MOST_COLUMNS} columns`);
  });

  it('shows a mapping and changes that are read', () => {
    const [mapping, changes] = [...text.matchAll(/```json\n([\s\S]*?)```/g)].map(([, json]) =>
      JSON.parse(json!),
    );
    expect(columnMappingSchema.parse(mapping).columns).toHaveLength(5);
    expect(parseCellChanges(changes, 'the page')).toHaveLength(2);
  });
});
