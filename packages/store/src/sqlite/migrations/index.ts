import type { Migration } from 'kysely';
import * as journals from './2026-11-25-journals.ts';
import * as photos from './2026-11-25-photos.ts';

/** Every migration by its dated name, in order. A migration is never edited once it was released: add another. */
export const migrations: Record<string, Migration> = {
  '2026-11-25-journals': journals,
  '2026-11-25-photos': photos,
};
