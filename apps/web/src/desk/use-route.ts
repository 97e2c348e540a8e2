import { useSyncExternalStore } from 'react';
import { hashOf, type Route, readRoute } from './route.ts';

function subscribe(listener: () => void): () => void {
  addEventListener('hashchange', listener);
  return () => removeEventListener('hashchange', listener);
}

/** Where we are, by the address. */
export function useRoute(): Route {
  return readRoute(useSyncExternalStore(subscribe, () => location.hash));
}

let moves = 0;
if (typeof addEventListener === 'function')
  addEventListener('hashchange', () => {
    moves += 1;
  });

/** Whether somebody went from one place to another since the page was loaded. */
export const hasMoved = (): boolean => moves > 0;

export function go(route: Route): void {
  location.hash = hashOf(route);
}
