/** The head of a column: its words, and whether figures stand under them. */
export type TableHead = string | { readonly figures: string };

/** A head with figures under it: both stand at the right. */
export const figures = (words: string): TableHead => ({ figures: words });

/** The heads of a table, one for each column. */
export function TableHeads({ heads }: { heads: readonly TableHead[] }) {
  return (
    <thead>
      <tr>
        {heads.map((head, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a column is known by its place; two may be called alike
          <th key={index} scope="col" className={typeof head === 'string' ? undefined : 'number'}>
            {typeof head === 'string' ? head : head.figures}
          </th>
        ))}
      </tr>
    </thead>
  );
}
