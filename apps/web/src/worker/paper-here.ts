import { type Language, makeLanguage } from '@becket/core';
import type { Ulid } from '@becket/journal';
import { makePaper } from '@becket/tasks/make-paper';
import { openBrowserStore } from '../store/browser-store.ts';
import type { PaperFile, PaperWish } from './paper-away.ts';
import { browserMeans } from './paper-means.ts';

/** A paper out of this device's own store, with no server. Throws as `makePaper` and `openBrowserStore` do. */
export async function paperHere(
  job: Ulid,
  { locale, ...wish }: PaperWish,
  database?: string,
): Promise<PaperFile> {
  const store = await openBrowserStore(database);
  try {
    const nothingWritten = () => {
      throw new Error('a paper changes nothing');
    };
    const context = {
      store,
      now: () => new Date(),
      newId: nothingWritten,
      by: '',
      device: '',
      language: await languageOf(locale),
    };
    const { bytes, fileName, mediaType } = await makePaper(context, job, { ...wish, means: browserMeans });
    return { content: new Blob([bytes as Uint8Array<ArrayBuffer>], { type: mediaType }), fileName };
  } finally {
    await store.close();
  }
}

async function languageOf(locale: string): Promise<Language> {
  if (!locale.startsWith('de')) return makeLanguage(locale);
  return makeLanguage(locale, (await import('../words/german.ts')).german);
}
