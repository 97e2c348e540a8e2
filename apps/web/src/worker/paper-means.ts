import type { PaperMeans } from '@becket/tasks/make-paper';
import normal from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url';
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url';
import boldItalics from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-BoldOblique.ttf?url';
import italics from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Oblique.ttf?url';

/** Type-setting in a browser: fonts that the service worker keeps on the device, photos made smaller by a canvas. */
export const browserMeans: PaperMeans = {
  fonts() {
    loaded ??= loadFonts().catch((error: unknown) => {
      // Asked for again by the next paper.
      loaded = undefined;
      throw error;
    });
    return loaded;
  },
  async smallerJpeg(picture, { longerSide_px, quality }) {
    const bitmap = await createImageBitmap(new Blob([picture as Uint8Array<ArrayBuffer>]));
    const scale = Math.min(1, longerSide_px / Math.max(bitmap.width, bitmap.height));
    const [width, height] = [bitmap.width, bitmap.height].map((side) =>
      Math.max(1, Math.round(side * scale)),
    ) as [number, number];
    const canvas = new OffscreenCanvas(width, height);
    const drawing = canvas.getContext('2d')!;
    drawing.imageSmoothingQuality = 'high';
    // Paper is white where a picture is not there.
    drawing.fillStyle = '#fff';
    drawing.fillRect(0, 0, width, height);
    drawing.drawImage(bitmap, 0, 0, width, height);
    bitmap.close();
    const packed = await canvas.convertToBlob({ type: 'image/jpeg', quality: quality / 100 });
    if (packed.type !== 'image/jpeg') throw new Error('this browser cannot write a JPEG');
    return new Uint8Array(await packed.arrayBuffer());
  },
};

let loaded: ReturnType<PaperMeans['fonts']> | undefined;

async function loadFonts() {
  const [normalFace, boldFace, italicsFace, boldItalicsFace] = await Promise.all(
    [normal, bold, italics, boldItalics].map(bytesAt),
  );
  return { normal: normalFace!, bold: boldFace!, italics: italicsFace!, boldItalics: boldItalicsFace! };
}

async function bytesAt(address: string): Promise<Uint8Array> {
  const failed =
    'Cannot make this paper: its fonts are not on this device yet. Open this page once where the server can be reached, and try again.';
  const response = await fetch(address).catch((cause: unknown) => {
    throw new Error(failed, { cause });
  });
  if (!response.ok) throw new Error(failed);
  return new Uint8Array(await response.arrayBuffer());
}
