import type { PartLoadLimit } from '@becket/tasks';

/** A ratio typed as a number from 1; undefined while it is none. */
export function typedRatio(text: string): number | undefined {
  const value = Number(text.trim().replace(',', '.'));
  return text.trim() !== '' && Number.isFinite(value) && value >= 1 ? value : undefined;
}

/** A load typed in kilonewtons; 'none' where nothing is typed, undefined while it is not a load. */
export function typedLoad(text: string): number | 'none' | undefined {
  if (text.trim() === '') return 'none';
  const value = Number(text.trim().replace(',', '.').replace(/kN$/i, ''));
  return Number.isFinite(value) && value > 0 ? value * 1000 : undefined;
}

/** A limit typed as a percentage; undefined while it is not one. */
export function typedPercent(text: string): number | undefined {
  const value = Number(text.trim().replace(',', '.').replace('%', ''));
  return text.trim() !== '' && Number.isFinite(value) && value > 0 && value < 100 ? value / 100 : undefined;
}

/** The highest load of one bridge or section set anew, or taken away. */
export function withPartLoad(
  limits: readonly PartLoadLimit[],
  part: Pick<PartLoadLimit, 'of' | 'name'>,
  highest_n: number | undefined,
): readonly PartLoadLimit[] {
  const others = limits.filter(({ of, name }) => of !== part.of || name !== part.name);
  return highest_n === undefined ? others : [...others, { ...part, highest_n }];
}

/** No bridge, or no section, above the load that was found; up to ten newtons, so that a rounded figure can be shown. */
export const noMoreThanFound = (
  limits: readonly PartLoadLimit[],
  of: PartLoadLimit['of'],
  found: readonly { readonly name: string; readonly load: number }[],
): readonly PartLoadLimit[] =>
  found.reduce(
    (sofar, { name, load }) => withPartLoad(sofar, { of, name }, Math.ceil(load / 10) * 10),
    limits,
  );
