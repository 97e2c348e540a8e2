import { english } from '@becket/core';
import {
  type FactOf,
  foldHandOver,
  foldJob,
  foldSettling,
  foldStringing,
  type HandOver,
  type Job,
  scaleDigest,
  strungDeviations,
  strungScale,
  type Ulid,
} from '@becket/journal';
import { entriesFor, entriesOf, type TaskContext } from '../context.ts';
import { requireDay } from '../settle/require-day.ts';
import { deviationInWords } from './deviation-words.ts';
import { stillOpen } from './still-open.ts';
import { wantedWires } from './wanted-wires.ts';

/** A hand-over as a person makes it; what is open and what deviates is worked out and kept with it. */
export interface HandOverToMake
  extends Omit<FactOf<'handed-over'>, 'kind' | 'v' | 'deviations' | 'stillOpen' | 'scaleDigest'> {
  /** Why a deviation was accepted, by its sentence; left out where nobody says. */
  readonly deviationReasons?: Readonly<Record<string, string>> | undefined;
  /** Set to say that everything that is still open was read, and is handed over as open. */
  readonly isOpenAccepted: boolean;
}

export interface HandOverOutcome {
  readonly job: Job;
  readonly handOver: HandOver;
}

/**
 * Hands the piano over: to whom, when, by whose name, with its cautions and aftercare. What is open and what deviates from
 * the chosen scale is kept as it stands on that day.
 *
 * Throws: RangeError when it was handed over already, a name is missing, a day is none, a day to tune lies before the
 * hand-over, something that was left alone has no reason, or something is open and nobody has said that it was read.
 * Nothing is stored then.
 */
export async function handOver(
  context: TaskContext,
  job: Ulid,
  { deviationReasons = {}, isOpenAccepted, ...toMake }: HandOverToMake,
): Promise<HandOverOutcome> {
  const language = context.language ?? english;
  const { say, day } = language;
  const existing = await entriesOf(context, job);
  const state = foldJob(existing);
  const before = foldHandOver(existing);
  if (before !== undefined)
    throw new RangeError(
      say(
        'Cannot hand this piano over: a job that is not handed over is needed, it was handed to {name} on {day}. Take that back first.',
        { name: before.to, day: day(before.on) },
      ),
    );
  requireNames(language, toMake);
  requireDay(context, toMake.on);
  for (const on of toMake.aftercare.tuneOn) {
    requireDay(context, on);
    if (on < toMake.on)
      throw new RangeError(
        say(
          'Cannot hand this piano over: days to tune after {day} are needed, {found} was found. Change that day.',
          { day: day(toMake.on), found: day(on) },
        ),
      );
  }
  const settling = foldSettling(existing);
  const scale = strungScale(state);
  const open = stillOpen(
    state,
    { stringing: foldStringing(existing), settling, scale, today: toMake.on },
    language,
  );
  if (open.length > 0 && !isOpenAccepted)
    throw new RangeError(
      say(
        'Cannot hand this piano over: {count, plural, one {# thing is} other {# things are}} still open, and nobody has said that it was read. Read the list, and say so.',
        { count: open.length },
      ),
    );
  const added = entriesFor(context, {
    job,
    existing,
    facts: [
      {
        kind: 'handed-over',
        v: 1,
        ...toMake,
        deviations: strungDeviations(state, scale, wantedWires(state)).map((deviation) => {
          const what = deviationInWords(deviation, language);
          const because = deviationReasons[what]?.trim();
          return because === undefined || because === '' ? { what } : { what, because };
        }),
        stillOpen: open.map(({ sentence }) => sentence),
        scaleDigest: scaleDigest(state, { notes: scale.notes.map(({ note }) => note) }),
      },
    ],
  });
  const all = [...existing, ...added];
  const changed = foldJob(all);
  await context.store.append(added);
  return { job: changed, handOver: foldHandOver(all)! };
}

function requireNames(
  { say }: NonNullable<TaskContext['language']>,
  { to, signedBy, leftAlone }: Pick<HandOverToMake, 'to' | 'signedBy' | 'leftAlone'>,
): void {
  if (to.trim() === '' || signedBy.trim() === '')
    throw new RangeError(
      to.trim() === ''
        ? say(
            'Cannot hand this piano over: the name of whoever takes it is needed, none was found. Give the name.',
          )
        : say(
            'Cannot hand this piano over: the name of whoever answers for it is needed, none was found. Give the name.',
          ),
    );
  const unexplained = leftAlone.find(({ because }) => because.trim() === '');
  if (unexplained !== undefined)
    throw new RangeError(
      say(
        'Cannot hand this piano over: a reason is needed for what was left alone, “{what}” has none. Give the reason, or take the line out.',
        { what: unexplained.what },
      ),
    );
}
