import { describe, expect, it } from 'vitest';
import { factSchema } from './index.ts';

describe('the fields of facts', () => {
  it('have no name that a fact is given when it stands in the state: the fold would write over it', () => {
    const taken = ['entry', 'step', 'at', 'by'];
    const clashes = factSchema.options.flatMap(({ shape }) => {
      const kind = shape.kind.value;
      return Object.keys(shape)
        .filter((field) => taken.includes(field))
        .map((field) => `${kind}: ${field}`);
    });
    // A withdrawal itself never stands in the state.
    expect(clashes).toEqual(['withdrawn: entry']);
  });
});
