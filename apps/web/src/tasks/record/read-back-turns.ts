import type { Observable } from '../../parts/observable.ts';
import type { Committed, ReadBack, RecordView } from './record-state.ts';

/** Tells what became of a value; undefined when there was nothing to do. */
export type Outcome = (committed: Committed | undefined) => void;

/**
 * Reads back in turn: the value typed last stands on the screen, however many before it are still being kept.
 * Gives back what begins a turn: it shows what can be read back at once, and gives the way to say what became of it.
 */
export function readBackTurns(view: Observable<RecordView>): (atOnce: ReadBack | undefined) => Outcome {
  let latest = 0;
  return (atOnce) => {
    latest += 1;
    const turn = latest;
    if (atOnce !== undefined) view.update({ readBack: atOnce });
    return (committed) => {
      const { readBack: shown, steps } = view.get();
      const isLatest = turn === latest;
      if (committed === undefined) {
        if (isLatest && shown?.is === 'being kept') view.update({ readBack: undefined });
        return;
      }
      // What was refused is shown in any case; what was kept behind a later value is not.
      const isToShow = isLatest || committed.readBack.is === 'not saved';
      view.update({
        readBack: isToShow ? committed.readBack : shown,
        steps: committed.step === undefined ? steps : [...steps.slice(-199), committed.step],
      });
    };
  };
}
