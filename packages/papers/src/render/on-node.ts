import { fontsOnNode } from './fonts-on-node.ts';
import type { PaperMeans } from './means.ts';

/** Type-setting on Node: fonts from the package they come in, photos made smaller by the picture library. */
export const meansHere: PaperMeans = {
  fonts: fontsOnNode,
  async smallerJpeg(picture, { longerSide_px, quality }) {
    const { default: sharp } = await import('sharp');
    return (
      sharp(picture)
        .resize({ width: longerSide_px, height: longerSide_px, fit: 'inside', withoutEnlargement: true })
        // Paper is white where a picture is not there.
        .flatten({ background: '#fff' })
        .jpeg({ quality })
        .toBuffer()
    );
  },
};
