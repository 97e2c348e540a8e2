/** A row to be written, and the table it goes into. */
export interface RowToWrite {
  readonly table: string;
  readonly row: unknown;
  /** True for a row that must be new: where one stands under its key or its index, nothing is written at all. */
  readonly isNew: boolean;
}

/**
 * Writes rows in one transaction without reading first, all or none, and waits until they are on the disk.
 *
 * All is asked for in one breath and no answer is waited for in between, so that only one message comes back.
 * Gives back false, with nothing written, when a row that must be new stood there already.
 * Throws: what the browser says when it cannot write; nothing is written then.
 */
export function writeAtOnce(database: IDBDatabase, rows: readonly RowToWrite[]): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const tables = [...new Set(rows.map(({ table }) => table))];
    const transaction = database.transaction(tables, 'readwrite', { durability: 'strict' });
    transaction.oncomplete = () => resolve(true);
    transaction.onabort = () => {
      const { error } = transaction;
      if (error?.name === 'ConstraintError') resolve(false);
      else reject(error ?? new DOMException('The writing was broken off.', 'AbortError'));
    };
    try {
      for (const { table, row, isNew } of rows) {
        const store = transaction.objectStore(table);
        if (isNew) store.add(row);
        else store.put(row);
      }
      transaction.commit();
    } catch (error) {
      transaction.onabort = () => reject(error);
      transaction.abort();
    }
  });
}
