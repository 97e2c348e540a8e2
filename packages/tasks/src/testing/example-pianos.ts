import { readFileSync } from 'node:fs';
import type { FactOf } from '@becket/journal';
import type { CellChange } from '../import/cell-changes.ts';
import { type ColumnMapping, columnMappingSchema } from '../import/column-mapping.ts';

/** One note as `truth.json` of an invented piano has it; the words are explained in `examples/recipes/recipe.ts`. */
export interface TrueNote {
  readonly key: number;
  readonly note: string;
  readonly section: string;
  readonly bridge: string;
  readonly strings: 1 | 2 | 3;
  readonly winding: 'plain' | 'wound';
  readonly frequency_hz: number;
  readonly size: string;
  readonly wireDiameter_m: number;
  readonly speakingLength_m: number;
  readonly layers: readonly { readonly wireDiameter_m: number }[];
  readonly bareFront_m: number;
  readonly bareBack_m: number;
  readonly frontLength_m: number;
  readonly backLength_m: number;
  readonly pinDiameter_m: number;
}

export interface Truth {
  readonly notes: readonly TrueNote[];
  readonly wrongCells: readonly { readonly row: number; readonly column: number; readonly written: string }[];
}

export interface ExamplePiano {
  readonly bytes: Uint8Array;
  readonly job: {
    readonly title: string;
    readonly piano: Omit<FactOf<'piano-described'>, 'kind' | 'v'>;
    readonly sections: readonly Omit<FactOf<'section-described'>, 'kind' | 'v'>[];
    readonly unisons: readonly Omit<FactOf<'unisons-described'>, 'kind' | 'v'>[];
  };
  readonly mapping: ColumnMapping;
  readonly corrections: readonly CellChange[];
  readonly truth: Truth;
}

const fileOf = (folder: string, name: string): Uint8Array =>
  readFileSync(new URL(`../../../../examples/${folder}/${name}`, import.meta.url));

export const jsonOf = (folder: string, name: string): unknown =>
  JSON.parse(new TextDecoder().decode(fileOf(folder, name)));

export const readingsOf = (folder: string): Uint8Array => new Uint8Array(fileOf(folder, 'readings.csv'));

/** The files of one invented piano in `examples/`. */
export function examplePiano(folder: 'grand' | 'vertical'): ExamplePiano {
  return {
    bytes: readingsOf(folder),
    job: jsonOf(folder, 'job.json') as ExamplePiano['job'],
    mapping: columnMappingSchema.parse(jsonOf(folder, 'mapping.json')),
    corrections: jsonOf(folder, 'corrections.json') as readonly CellChange[],
    truth: jsonOf(folder, 'truth.json') as Truth,
  };
}
