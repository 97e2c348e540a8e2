import { useRef } from 'react';

/** The same list as long as the same things stand in it, however often it is made. */
export function useSame<T>(list: readonly T[]): readonly T[] {
  const kept = useRef(list);
  const isSame =
    kept.current.length === list.length && kept.current.every((one, index) => one === list[index]);
  if (!isSame) kept.current = list;
  return kept.current;
}
