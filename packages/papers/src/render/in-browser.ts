import type { PaperMeans } from './means.ts';

const missing = async (): Promise<never> => {
  throw new Error(
    'Cannot make this paper: in a browser its fonts are needed from whoever asks for it, and none were handed over. Load the page again.',
  );
};

/** Stands where `on-node.ts` stands on Node, so that nothing of Node gets into a bundle: a browser hands its own means. */
export const meansHere: PaperMeans = { fonts: missing, smallerJpeg: missing };
