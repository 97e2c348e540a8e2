import type { Database } from 'better-sqlite3';
import { type DatabaseConnection, type Driver, SqliteDialect, SqliteDriver } from 'kysely';

/**
 * Kysely's SQLite dialect, but for one thing: SQLite rolls a transaction back by itself when the disk is full or fails.
 * Rolling back once more would then fail as well, and hide the reason.
 */
export class BecketDialect extends SqliteDialect {
  readonly #database: Database;

  constructor(database: Database) {
    super({ database });
    this.#database = database;
  }

  override createDriver(): Driver {
    return new CarefulDriver(this.#database);
  }
}

class CarefulDriver extends SqliteDriver {
  readonly #database: Database;

  constructor(database: Database) {
    super({ database });
    this.#database = database;
  }

  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.#database.inTransaction) await super.rollbackTransaction(connection);
  }
}
