import type { Kysely } from 'kysely';

/** Jobs and their entries. Types are those SQLite and PostgreSQL share. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('jobs')
    .addColumn('job', 'varchar(26)', (column) => column.primaryKey())
    .addColumn('last_arrival', 'bigint', (column) => column.notNull())
    .execute();
  await db.schema
    .createTable('entries')
    .addColumn('id', 'varchar(26)', (column) => column.primaryKey())
    .addColumn('job', 'varchar(26)', (column) => column.notNull().references('jobs.job'))
    .addColumn('arrival', 'bigint', (column) => column.notNull())
    .addColumn('step', 'bigint', (column) => column.notNull())
    .addColumn('at', 'text', (column) => column.notNull())
    .addColumn('by', 'text', (column) => column.notNull())
    .addColumn('device', 'text', (column) => column.notNull())
    .addColumn('kind', 'text', (column) => column.notNull())
    .addColumn('fact', 'text', (column) => column.notNull())
    .addUniqueConstraint('entries_job_arrival', ['job', 'arrival'])
    .execute();
  await db.schema.createIndex('entries_job_step').on('entries').columns(['job', 'step', 'id']).execute();
}
