import { type Language, sayKnown } from '@becket/core';

/** Between the sources of figures that are told together. */
export const betweenSources = '; ';

/** Where figures come from: each source of ours is said, each that the shop typed stays as it is. */
export const sourcesInWords = (sources: string, language: Language): string =>
  sources
    .split(betweenSources)
    .map((source) => sayKnown(source, language))
    .join(betweenSources);
