import type { Catalogue } from '@becket/core';
import { german as bringIn } from './german-bring-in.ts';
import { german as parts } from './german-parts.ts';
import { german as readings } from './german-readings.ts';
import { german as strings } from './german-strings.ts';
import { german as strip } from './german-strip.ts';
import { german as wires } from './german-wires.ts';

export const german: Catalogue = {
  ...bringIn,
  ...strip,
  ...wires,
  ...parts,
  ...strings,
  ...readings,
};
