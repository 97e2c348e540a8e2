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

export function go(route: Route): void {
  location.hash = hashOf(route);
}
