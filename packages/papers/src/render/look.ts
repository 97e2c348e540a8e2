/* What every page looks like. Lengths are points (1/72 in). */

export const ink = '#1a1a1a';
/** Of what stands back; 7 : 1 against white, so that a photocopy still has it. Source: WCAG 2.2, contrast ratio. */
export const quiet = '#595959';
/** Hair lines and shading carry no meaning of their own. */
export const rule = '#c8c8c8';
export const shade = '#efefef';
export const textSizes = { usual: { body: 9.5, table: 8.5 }, large: { body: 13, table: 14 } } as const;
