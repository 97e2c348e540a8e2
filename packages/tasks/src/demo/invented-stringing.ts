import { type Fact, foldStringing, stringName, type Ulid } from '@becket/journal';
import { addFacts, readJob, type TaskContext } from '../context.ts';
import { stringingFigures } from '../order/stringing-figures.ts';
import { stringingCourse } from '../string/stringing-course.ts';

/** Where half a size more went on than was chosen: A#4 [m]. */
const otherSize = { key: 50, diameter_m: 0.000965 } as const;
/** The wire that kinked and was strung again, by its first string: C#5. */
const kinked = '53/1';

/** Notes every wire of the plan of the invented grand as being on, with one that kinked and was strung again. */
export async function stringDemoJob(context: TaskContext, job: Ulid): Promise<void> {
  const state = await readJob(context, job);
  const { wires } = stringingCourse(state, {
    figures: stringingFigures(state),
    stringing: foldStringing([]),
    bass: [],
  });
  const facts = wires.flatMap(({ strings, diameter }): Fact[] => {
    const places = strings.map(({ key, string }) => ({ key, string }));
    const hasOther = diameter !== undefined && places.some(({ key }) => key === otherSize.key);
    const on: Fact = {
      kind: 'wire-on',
      v: 1,
      strings: places,
      ...(diameter === undefined ? {} : { diameter_m: hasOther ? otherSize.diameter_m : diameter }),
    };
    if (stringName(places[0]!) !== kinked) return [on];
    const mishap: Fact = {
      kind: 'stringing-mishap',
      v: 1,
      what: 'kinked',
      strings: places,
      isOff: true,
      note: 'at the hitch pin',
    };
    return [on, mishap, on];
  });
  await addFacts(context, job, facts);
}
