import { type Kysely, sql } from 'kysely';

/** Photos by digest. PostgreSQL calls the type of the bytes `bytea`. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('blobs')
    .addColumn('digest', 'varchar(64)', (column) => column.primaryKey())
    .addColumn('bytes', sql`blob`, (column) => column.notNull())
    .execute();
}
