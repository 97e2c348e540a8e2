import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jpegWith, locatedExif, tinyJpeg } from '../testing/tiny-jpeg.ts';
import { photoTypeOf, tellingParts, withoutTellingParts } from './photo-bytes.ts';

const ascii = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

describe('photoTypeOf()', () => {
  it.each([
    ['image/jpeg', tinyJpeg],
    ['image/png', ascii('\x89PNG\r\n\x1a\n....')],
    ['image/webp', ascii('RIFF\x01\x02\x03\x04WEBPVP8 ')],
    [undefined, ascii('RIFF\x01\x02\x03\x04WAVEfmt ')],
    [undefined, ascii('<svg xmlns="http://www.w3.org/2000/svg"/>')],
    [undefined, ascii('GIF89a')],
    [undefined, new Uint8Array()],
    [undefined, new Uint8Array([0xff, 0xd8])],
  ])('is %s by the first bytes', (type, bytes) => {
    expect(photoTypeOf(bytes)).toBe(type);
  });
});

describe('withoutTellingParts()', () => {
  it('leaves a photo that tells nothing as it is', () => {
    expect(tellingParts(tinyJpeg)).toEqual([]);
    expect(withoutTellingParts(tinyJpeg)).toEqual(tinyJpeg);
  });

  it('takes position, comments and what stands after the picture out, and nothing of the picture', () => {
    const telling = jpegWith([
      { marker: 0xe1, content: locatedExif },
      { marker: 0xed, content: ascii('Photoshop 3.0 by Ada') },
      { marker: 0xfe, content: ascii('at the school') },
    ]);
    expect(tellingParts(telling)).toEqual(['EXIF or XMP', 'IPTC', 'comment']);
    const trailed = new Uint8Array([...telling, ...ascii('52.5200N')]);
    expect(withoutTellingParts(trailed)).toEqual(tinyJpeg);
  });

  it('leaves no telling part behind, whatever segments come in whatever order', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            marker: fc.oneof(fc.integer({ min: 0xe0, max: 0xef }), fc.constant(0xfe)),
            content: fc.uint8Array({ maxLength: 40 }),
          }),
          { maxLength: 8 },
        ),
        (segments) => {
          const plain = withoutTellingParts(jpegWith(segments));
          expect(tellingParts(plain)).toEqual([]);
          expect(withoutTellingParts(plain)).toEqual(plain);
        },
      ),
    );
  });

  it('refuses a photo that is cut off anywhere, in one sentence', () => {
    for (let length = 0; length < tinyJpeg.length - 1; length += 1) {
      expect(() => withoutTellingParts(tinyJpeg.subarray(0, length))).toThrow(
        /^Cannot read this photo: a whole JPEG is needed, .* Take the photo again\.$/,
      );
    }
  });
});
