import { tellingParts } from '@becket/journal';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { tinyJpeg } from '../../../journal/src/testing/tiny-jpeg.ts';
import { jpegSize } from './jpeg-size.ts';
import { meansHere } from './on-node.ts';
import { printedSide_px, printSized } from './print-sized.ts';

const printSizedOnNode = (bytes: Uint8Array) => printSized(bytes, meansHere.smallerJpeg);

/** A photo as a device keeps it, with detail everywhere. */
const large = await sharp({
  create: {
    width: 2560,
    height: 1707,
    channels: 3,
    background: '#806040',
    noise: { type: 'gaussian', mean: 128, sigma: 40 },
  },
})
  .jpeg({ quality: 85 })
  .toBuffer();

describe('printSized() on Node', () => {
  it('makes a photo as large as paper shows it, in its own proportions, telling nothing beside its picture', async () => {
    const printed = await printSizedOnNode(large);
    const { width, height } = jpegSize(printed)!;
    expect(width).toBe(printedSide_px);
    expect(Math.abs(height - (printedSide_px * 1707) / 2560)).toBeLessThanOrEqual(0.5);
    expect(printed.length).toBeLessThan(large.length / 4);
    expect(tellingParts(printed)).toEqual([]);
  });

  it.each(['png', 'webp'] as const)('makes a JPEG of a %s, white where it is transparent', async (kind) => {
    const clear = { r: 0, g: 0, b: 0, alpha: 0 };
    const picture = await sharp({ create: { width: 30, height: 20, channels: 4, background: clear } })
      .toFormat(kind)
      .toBuffer();
    const printed = await printSizedOnNode(picture);
    expect(jpegSize(printed)).toEqual({ width: 30, height: 20 });
    const { channels } = await sharp(printed).stats();
    expect(channels.map(({ min }) => min)).toEqual([255, 255, 255]);
  });

  it('leaves a small photo, and what is no picture, as they are', async () => {
    expect(await printSizedOnNode(tinyJpeg)).toBe(tinyJpeg);
    const noPicture = Uint8Array.of(1, 2, 3);
    expect(await printSizedOnNode(noPicture)).toBe(noPicture);
    const cut = large.subarray(0, 2000);
    expect(await printSizedOnNode(cut)).toBe(cut);
  });
});
