import { columnMappingSchema } from '@becket/tasks';
import { z } from 'zod';

/** How a table is to be brought in; goes beside the file, as JSON. */
export const importRequestSchema = z.object({
  mapping: columnMappingSchema.describe("One meaning for each column, in the table's order."),
  changes: z
    .array(
      z.object({
        row: z.int().positive().describe('As a spreadsheet counts: 1 for the first row of the file.'),
        column: z.int().nonnegative().describe('0 for the first column.'),
        use: z.string().nullable().describe('What stands in the cell instead; null leaves the cell out.'),
        reason: z.string().min(1).max(500),
      }),
    )
    .max(20_000)
    .default([]),
  by: z.string().trim().min(1).max(200).describe('Who brings it in: a name the shop uses.'),
  device: z.string().trim().min(1).max(200).optional(),
});

export const importFormSchema = z
  .object({
    file: z.any().meta({ type: 'string', format: 'binary', description: 'The CSV file.' }),
    request: z.string().describe('JSON as in the schema ImportRequest.'),
  })
  .meta({ id: 'ImportForm' });

export const importDoneSchema = z
  .object({
    counts: z.object({ rows: z.int(), readings: z.int(), blankCells: z.int(), notes: z.int() }),
    questions: z
      .array(
        z.object({
          row: z.int(),
          column: z.int(),
          columnName: z.string(),
          found: z.string(),
          expected: z.string(),
          sentence: z.string(),
          suggestion: z.string().optional(),
        }),
      )
      .describe('Cells that were brought in and are doubted.'),
    notices: z.array(z.string()).describe('How the file was read, where that is not plain.'),
  })
  .meta({ id: 'ImportDone' });

export type ImportDone = z.infer<typeof importDoneSchema>;
