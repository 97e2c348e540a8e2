import type { Ulid } from '@becket/journal';
import { useId } from 'react';
import { useObservable } from '../parts/observable.ts';
import { saveFile } from '../parts/save-file.ts';
import { type Saving, savingOf } from '../worker/save-job-away.ts';

/** Saves the whole job as one file: its journal and its photos in a zip. Made away from the page, and can be stopped. */
export function SaveJob({ job }: { job: Ulid }) {
  const saving = savingOf(job);
  const state = useObservable(saving.state);
  const label = useId();
  const isUnderWay = state.is === 'beginning' || state.is === 'reading' || state.is === 'writing';
  const isBad = state.is === 'failed' || (state.is === 'saved' && state.missingPhotos.length > 0);
  return (
    <>
      <div className="button-row">
        <button
          type="button"
          className="button"
          // Not disabled, which would take the focus from under the finger.
          aria-disabled={isUnderWay}
          onClick={() => saving.start(new Date(), saveFile)}
        >
          Save the job as a file
        </button>
        {isUnderWay && (
          <button type="button" className="button" onClick={saving.stop}>
            Stop saving
          </button>
        )}
      </div>
      {isUnderWay && (
        <progress
          aria-labelledby={label}
          {...(state.is === 'reading' ? { value: state.photo - 1, max: state.photos } : {})}
        />
      )}
      <p id={label} role={isBad ? 'alert' : 'status'} className={isBad ? 'warn' : undefined}>
        {sentenceFor(state)}
      </p>
    </>
  );
}

function sentenceFor(state: Saving): string {
  switch (state.is) {
    case 'idle':
      return '';
    case 'beginning':
      return 'Reading the journal …';
    case 'reading':
      return `Reading photo ${state.photo} of ${state.photos} …`;
    case 'writing':
      return 'Writing the file …';
    case 'stopped':
      return 'Stopped: no file was saved, and the job is as it was.';
    case 'failed':
      return `▲ ${state.sentence}`;
    case 'saved': {
      const { fileName, entries, photos, missingPhotos } = state;
      const held = `${counted(entries, 'entry', 'entries')} and ${counted(photos, 'photo', 'photos')}`;
      return missingPhotos.length === 0
        ? `${fileName} is among your downloads: ${held}.`
        : `▲ ${fileName} is among your downloads, with ${held}. ${counted(missingPhotos.length, 'photo is', 'photos are')} not on this device, or damaged here; the file is without. Save the job again on the device that took them.`;
    }
  }
}

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;
