import { type Ulid, writeJournalLines } from '@becket/journal';
import type { JournalStore } from '@becket/store';
import { useDesk } from '../desk/use-desk.ts';
import { fileNameFrom, saveFile } from '../parts/save-file.ts';

/** Saves the whole journal of a job as one file: JSON Lines, one entry a line. */
export function SaveJob({ store, job: id }: { store: JournalStore; job: Ulid }) {
  const { job } = useDesk();
  return (
    <button
      type="button"
      className="button"
      onClick={async () => {
        const { entries } = await store.entries(id);
        saveFile(
          new Blob([writeJournalLines(entries)], { type: 'application/x-ndjson' }),
          `${fileNameFrom(job.title)}.becket.jsonl`,
        );
      }}
    >
      Save the job as a file
    </button>
  );
}
