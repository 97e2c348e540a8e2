/** The tables, as every migration together leaves them. */
export interface Tables {
  /** One row a job. Written first in every transaction that adds to the job, so that its arrivals are counted one writer at a time. */
  jobs: {
    job: string;
    /** Arrival number of the newest entry; 0 before the first. */
    last_arrival: number;
  };
  /** One row an entry. Rows are only ever added. */
  entries: {
    id: string;
    job: string;
    /** 1, 2, 3 … in order of arrival within the job: the cursor. */
    arrival: number;
    step: number;
    at: string;
    by: string;
    device: string;
    /** The fact's kind, for looking around by hand; the fact itself has it too. */
    kind: string;
    /** The fact as JSON text, just as it was written. */
    fact: string;
  };
  /** One row a photo. */
  blobs: {
    /** SHA-256 of the bytes, hexadecimal. */
    digest: string;
    bytes: Uint8Array;
  };
}
