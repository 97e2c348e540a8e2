import { loadLanguage } from '../desk/device-language.ts';
import { encodePhoto } from '../photos/photo-encoding.ts';
import type { PhotoAnswer, PhotoQuestion } from './photo-away.ts';

/** Makes photos smaller off the main thread: unpacking one of 24 megapixels would stop the page for a second or more. */
addEventListener('message', async ({ data: { number, file, locale } }: MessageEvent<PhotoQuestion>) => {
  const post = postMessage as (answer: PhotoAnswer, moved?: Transferable[]) => void;
  try {
    const photo = await encodePhoto(file, await loadLanguage(locale));
    post({ number, photo }, [photo.jpeg.buffer as ArrayBuffer]);
  } catch (error) {
    post({ number, sentence: error instanceof Error ? error.message : String(error) });
  }
});
