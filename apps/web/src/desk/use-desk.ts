import { createContext, useContext } from 'react';
import { useObservable } from '../parts/observable.ts';
import type { JobDesk, OpenJob } from './job-desk.ts';

export interface DeskInView extends OpenJob {
  readonly desk: JobDesk;
}

export const DeskContext = createContext<DeskInView | undefined>(undefined);

/** The open job, in a view below the job's frame. */
export function useDesk(): DeskInView {
  const desk = useContext(DeskContext);
  if (desk === undefined) throw new Error('this view needs an open job around it');
  return desk;
}

/** The note that is being looked at, and the way to look at another. */
export function useSelectedKey(): [number | undefined, (key: number | undefined) => void] {
  const { desk } = useDesk();
  return [useObservable(desk.selectedKey), desk.selectedKey.set];
}
