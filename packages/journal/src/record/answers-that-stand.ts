import type { Place } from '../facts/place.ts';
import type { Job } from '../fold/job.ts';

/**
 * The answers *unknown*, *none* and *does not apply* that nothing said at the same place stands against, in the order in
 * which they were given: a later answer takes the place of an earlier one, and a reading as found says more than either.
 *
 * An answer without a point speaks for every point of its string or note.
 */
export function answersThatStand({
  absences,
  readings,
}: Pick<Job, 'absences' | 'readings'>): Job['absences'] {
  return absences.filter(
    (one, index) =>
      !absences
        .slice(index + 1)
        .some((later) => later.quantity === one.quantity && isSamePlace(later.place, one.place)) &&
      !readings.some(
        (reading) =>
          reading.quantity === one.quantity &&
          reading.stage === 'as found' &&
          isSamePlace({ ...reading.place, point: one.place.point && reading.place.point }, one.place),
      ),
  );
}

const isSamePlace = (one: Place, other: Place): boolean =>
  one.key === other.key &&
  one.string === other.string &&
  one.section === other.section &&
  one.point === other.point;
