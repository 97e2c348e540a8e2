import type { Gap, Job, ReadingQuantityName } from '@becket/journal';
import type { TaskName } from '../../desk/route.ts';
import { cellId } from './cell-at.ts';
import { appliesTo, furtherColumns, stringColumns } from './grid.ts';
import type { RecordView } from './record-state.ts';

/** Where a gap is filled, and what is done on the way there. */
export interface GapWay {
  readonly task: TaskName;
  /** Undefined for the first part of the task. */
  readonly part?: string;
  /** What the Record screen shows then. */
  readonly view?: Partial<RecordView>;
  /** The note to look at. */
  readonly key?: number;
  /** Selects what is typed into or tapped there. */
  readonly focus?: string;
}

/** The head of the readings that belong to a section or to the whole piano. */
const placeReadings = '[aria-labelledby="place-readings"]';
const seenThing = (thing: string): string => `[data-thing="${thing}"]`;

/** The way to the place where a gap is filled: the cell itself, where it is a cell. */
export function wayOfGap(
  { name, place }: Pick<Gap, 'name' | 'place'>,
  { sections, unisons }: Pick<Job, 'sections' | 'unisons'>,
): GapWay {
  const kind = name.slice(0, Math.max(0, name.indexOf('/'))) || name;
  const { key, section } = place;
  switch (kind) {
    case 'piano':
      return { task: 'appraise' };
    case 'pitch-offset':
    case 'relative-humidity':
    case 'temperature':
      return { task: 'appraise', part: 'air' };
    case 'sections':
    case 'stringing':
      return { task: 'record', part: 'sections' };
    case 'soundboard-crown':
      return {
        task: 'record',
        part: 'seen',
        ...(sections[0] === undefined ? {} : { view: { section: sections[0].section } }),
        focus: placeReadings,
      };
  }
  if (section === undefined && key === undefined) return { task: 'record', part: 'sections' };
  const inSection = section === undefined ? {} : { view: { section } };
  const column = [...stringColumns, ...furtherColumns].find(({ quantity }) => quantity === kind);
  if (column !== undefined) {
    // What is wanted once in a section is read at its first note that has it.
    const described = sections.find((one) => one.section === section);
    const at =
      key ??
      [...unisons.values()]
        .filter((one) => described && described.firstKey <= one.key && one.key <= described.lastKey)
        .sort((a, b) => a.key - b.key)
        .find((one) => appliesTo(column, one))?.key ??
      described?.firstKey;
    const quantity = column.quantity satisfies ReadingQuantityName;
    return {
      task: 'record',
      view: {
        column: quantity,
        section,
        ...(furtherColumns.includes(column) ? { withFurther: true } : {}),
      },
      ...(at === undefined ? {} : { key: at, focus: `#${cellId({ key: at, quantity })}` }),
    };
  }
  switch (kind) {
    case 'loops':
    case 'hitch-pins':
      return { task: 'record', part: 'loops', ...inSection };
    case 'stamps':
      return { task: 'record', part: 'sizes', ...inSection, focus: '[aria-labelledby="stamps"] form' };
    case 'windings':
      // Of a note that is in no section the section comes first.
      return section === undefined
        ? { task: 'record', part: 'sections' }
        : { task: 'record', part: 'seen', ...inSection, focus: '[aria-labelledby="windings"]' };
    case 'strike-line-spacing':
    case 'bridge-spacing':
    case 'pressure-bar-height':
    case 'pin-length':
    case 'pin-height':
    case 'pin-coils':
      return { task: 'record', part: 'seen', ...inSection, focus: placeReadings };
    default:
      return { task: 'record', part: 'seen', ...inSection, focus: seenThing(kind) };
  }
}
