import type { Language } from '@becket/core';
import type { Ulid } from '@becket/journal';
import { useId } from 'react';
import { useLanguage } from '../parts/language.tsx';
import { useObservable } from '../parts/observable.ts';
import { saveFile } from '../parts/save-file.ts';
import { type Saving, savingOf } from '../worker/save-job-away.ts';

/** Saves the whole job as one file: its journal and its photos in a zip. Made away from the page, and can be stopped. */
export function SaveJob({ job }: { job: Ulid }) {
  const language = useLanguage();
  const { say } = language;
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
          onClick={() => saving.start(new Date(), saveFile, language)}
        >
          {say('Save the job as a file')}
        </button>
        {isUnderWay && (
          <button type="button" className="button" onClick={saving.stop}>
            {say('Stop saving')}
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
        {sentenceFor(state, language)}
      </p>
    </>
  );
}

function sentenceFor(state: Saving, { say }: Language): string {
  switch (state.is) {
    case 'idle':
      return '';
    case 'beginning':
      return say('Reading the journal …');
    case 'reading':
      return say('Reading photo {photo} of {photos} …', { photo: state.photo, photos: state.photos });
    case 'writing':
      return say('Writing the file …');
    case 'stopped':
      return say('Stopped: no file was saved, and the job is as it was.');
    case 'failed':
      return `▲ ${state.sentence}`;
    case 'saved': {
      const { fileName, entries, photos, missingPhotos } = state;
      const held = say(
        '{entries, plural, one {1 entry} other {{entriesText} entries}} and {photos, plural, one {1 photo} other {{photosText} photos}}',
        { entries, entriesText: String(entries), photos, photosText: String(photos) },
      );
      return missingPhotos.length === 0
        ? say('{fileName} is among your downloads: {held}.', { fileName, held })
        : say(
            '▲ {fileName} is among your downloads, with {held}. {missing, plural, one {# photo is} other {# photos are}} not on this device, or damaged here; the file is without. Save the job again on the device that took them.',
            { fileName, held, missing: missingPhotos.length },
          );
    }
  }
}
