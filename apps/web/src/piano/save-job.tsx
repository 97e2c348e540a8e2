import type { Ulid } from '@becket/journal';
import { saveJob } from '@becket/tasks';
import { useState } from 'react';
import { sentenceOf } from '../desk/sentence-of.ts';
import { useDevice } from '../desk/use-device.ts';
import { saveFile } from '../parts/save-file.ts';

/** Saves the whole job as one file: its journal and its photos in a zip. */
export function SaveJob({ job: id }: { job: Ulid }) {
  const device = useDevice();
  const [notice, setNotice] = useState<string>();
  async function save(): Promise<void> {
    try {
      const { bytes, fileName, missingPhotos } = await saveJob(device.context(), id);
      saveFile(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'application/zip' }), fileName);
      setNotice(
        missingPhotos.length === 0
          ? undefined
          : `${missingPhotos.length} photos are not on this device, or are damaged here; the file is without them. Save the job again on the device that took them.`,
      );
    } catch (error) {
      setNotice(sentenceOf(error));
    }
  }
  return (
    <>
      <button type="button" className="button" onClick={save}>
        Save the job as a file
      </button>
      {notice !== undefined && <p role="alert">▲ {notice}</p>}
    </>
  );
}
