import { randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { hostname, userInfo } from 'node:os';
import { english, type Language } from '@becket/core';
import { newUlid } from '@becket/journal';
import type { JournalStore } from '@becket/store';
import { databaseFileIn, openSqliteStore } from '@becket/store/sqlite';
import type { TaskContext } from '@becket/tasks';
import { NoStore } from './refusals.ts';

/** Options that every command understands. */
export interface CommonOptions {
  readonly data: string;
  readonly json?: boolean;
  readonly by?: string;
  /** A BCP 47 tag, read before everything else: see `localeAsked`. */
  readonly language?: string;
}

/**
 * Opens the store of a data folder, does the work with it, and closes it whatever happens.
 *
 * Throws: NoStore, unless the command may begin one; so that a mistyped folder is not made.
 */
export async function inWorkshop<Result>(
  options: CommonOptions,
  language: Language,
  work: (context: TaskContext) => Promise<Result>,
  { mayBegin = false }: { readonly mayBegin?: boolean } = {},
): Promise<Result> {
  if (!mayBegin && !existsSync(databaseFileIn(options.data))) throw new NoStore(options.data, language);
  const store = await openSqliteStore(databaseFileIn(options.data));
  try {
    return await work(contextOver(store, options.by, language));
  } finally {
    await store.close();
  }
}

/** The context of tasks started from the command line: the clock, chance and names of this computer. */
export function contextOver(
  store: JournalStore,
  by = userInfo().username,
  language: Language = english,
): TaskContext {
  return {
    store,
    now: () => new Date(),
    newId: () => newUlid(new Date(), () => randomBytes(4).readUInt32BE() / 2 ** 32),
    by,
    device: hostname() || language.say('this computer'),
    language,
  };
}
