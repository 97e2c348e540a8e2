import { type Entry, isKnownFact } from '../entry.ts';
import type { Fact } from '../facts/index.ts';
import { amendmentOf } from './amendment.ts';
import type { Job } from './job.ts';
import { standing } from './standing.ts';

/**
 * The state after one further entry, where that is quickly told: a reading, the correction of a reading that stands, an
 * answer instead of a reading, or the withdrawal of a plain reading. They are what is typed string by string.
 *
 * The entry has to come after every other one of the journal. Undefined where all has to be folded anew.
 */
export function foldFurther(job: Job, entry: Entry): Job | undefined {
  const { fact } = entry;
  if (!isKnownFact(fact)) return undefined;
  const next = { ...job, entryCount: job.entryCount + 1, lastStep: entry.step };
  switch (fact.kind) {
    case 'reading-absent':
      return {
        ...next,
        absences: [...job.absences, standing(entry, fact)],
        amendments: amendmentsWith(job, entry as Entry<Fact>),
      };
    case 'reading': {
      if (fact.replaces === undefined)
        return {
          ...next,
          readings: [...job.readings, standing(entry, fact)],
          amendments: amendmentsWith(job, entry as Entry<Fact>),
        };
      if (!job.readings.some((reading) => reading.entry === fact.replaces)) return undefined;
      return {
        ...withoutReading(next, fact.replaces),
        readings: [...readingsWithout(job, fact.replaces), standing(entry, fact)],
        amendments: amendmentsWith(withoutReading(job, fact.replaces), entry as Entry<Fact>),
      };
    }
    case 'withdrawn': {
      const target = job.readings.find((reading) => reading.entry === fact.entry);
      // With a correction what it corrected may come back.
      if (target === undefined || target.replaces !== undefined) return undefined;
      return {
        ...withoutReading(next, target.entry),
        amendments: amendmentsWith(withoutReading(job, target.entry), entry as Entry<Fact>, target),
      };
    }
    default:
      return undefined;
  }
}

const readingsWithout = (job: Job, entry: string) => job.readings.filter((one) => one.entry !== entry);

function withoutReading(job: Job, entry: string): Job {
  return {
    ...job,
    readings: readingsWithout(job, entry),
    // What no longer stands amends nothing.
    amendments: job.amendments.filter((one) => one.entry !== entry),
    withdrawnEntries: new Set([...job.withdrawnEntries, entry]),
  };
}

function amendmentsWith(
  { seal, amendments }: Job,
  entry: Entry<Fact>,
  withdrawn?: { readonly kind: string },
): Job['amendments'] {
  const own = seal === undefined ? undefined : amendmentOf(entry, withdrawn);
  return own === undefined ? amendments : [...amendments, own];
}
