import { useEffect, useState } from 'react';
import { sentenceOf } from '../desk/sentence-of.ts';
import { useDevice } from '../desk/use-device.ts';
import { useLanguage } from '../parts/language.tsx';
import { useObservable } from '../parts/observable.ts';

export type PhotoInView =
  | { readonly is: 'reading' }
  | { readonly is: 'here'; readonly address: string }
  | { readonly is: 'elsewhere' }
  | { readonly is: 'trouble'; readonly sentence: string };

/** The picture of a photo, from this device, for a view of one photo (keyed by its digest); one that is elsewhere is looked for again after each exchange. */
export function usePhoto(digest: string): PhotoInView {
  const language = useLanguage();
  const { store, exchange } = useDevice();
  const { lastAt } = useObservable(exchange.state);
  const [photo, setPhoto] = useState<PhotoInView>({ is: 'reading' });
  const isSettled = photo.is === 'here' || photo.is === 'trouble';
  const lookedAt = isSettled ? undefined : lastAt;

  // biome-ignore lint/correctness/useExhaustiveDependencies: a photo that is elsewhere is looked for after each exchange
  useEffect(() => {
    if (isSettled) return;
    let isCurrent = true;
    store.blobs.get(digest).then(
      (bytes) => {
        if (!isCurrent) return;
        if (bytes === undefined) setPhoto({ is: 'elsewhere' });
        else {
          const blob = new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'image/jpeg' });
          setPhoto({ is: 'here', address: URL.createObjectURL(blob) });
        }
      },
      (error: unknown) => {
        if (isCurrent) setPhoto({ is: 'trouble', sentence: sentenceOf(error, language) });
      },
    );
    return () => {
      isCurrent = false;
    };
  }, [store, digest, isSettled, lookedAt]);

  const address = photo.is === 'here' ? photo.address : undefined;
  useEffect(() => {
    if (address === undefined) return;
    return () => URL.revokeObjectURL(address);
  }, [address]);
  return photo;
}
