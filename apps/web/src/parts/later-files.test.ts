import { describe, expect, it } from 'vitest';
import { bringLaterFiles, clearLaterFiles, type LaterFiles, type Means } from './later-files.ts';

const list = [
  { url: 'assets/setting-a1.js', bytes: 900 },
  { url: 'assets/font-b2.ttf', bytes: 600 },
  { url: 'assets/reader-c3.js', bytes: 300 },
];

/** A cache as a browser has it, by whole addresses, and a network that knows some files. */
function means(onServer: readonly string[], kept: readonly string[] = []) {
  const whole = (url: RequestInfo | URL) => new URL(String(url), 'https://shop.example/').href;
  const files = new Map(kept.map((url) => [whole(url), 'kept']));
  const asked: string[] = [];
  const cache: Means['cache'] = {
    match: async (url) => (files.has(whole(url as string)) ? new Response() : undefined),
    put: async (url, response) => void files.set(whole(url as string), await response.text()),
    keys: async () => [...files.keys()].map((url) => new Request(url)),
    delete: async (url) => files.delete(whole(url as string)),
  };
  const fetch = async (url: string) => {
    asked.push(url);
    return new Response('from the server', { status: onServer.includes(url) ? 200 : 404 });
  };
  return { cache, fetch, asked, files };
}

describe('bringLaterFiles()', () => {
  it('fetches what is missing, one after the other, and tells what is left', async () => {
    const own = means(
      list.map(({ url }) => url),
      ['assets/font-b2.ttf'],
    );
    const steps: LaterFiles[] = [];
    await bringLaterFiles(list, own, (step) => steps.push(step));
    expect(own.asked).toEqual(['assets/setting-a1.js', 'assets/reader-c3.js']);
    expect(steps).toEqual([
      { is: 'coming', missing_bytes: 1200 },
      { is: 'coming', missing_bytes: 300 },
      { is: 'here', missing_bytes: 0 },
    ]);
    expect(own.files.get('https://shop.example/assets/font-b2.ttf')).toBe('kept');
  });

  it('asks for nothing when everything is there', async () => {
    const own = means(
      [],
      list.map(({ url }) => url),
    );
    const steps: LaterFiles[] = [];
    await bringLaterFiles(list, own, (step) => steps.push(step));
    expect(own.asked).toEqual([]);
    expect(steps).toEqual([{ is: 'here', missing_bytes: 0 }]);
  });

  it('keeps what came when a later file fails, and never an answer that is none', async () => {
    const own = means(['assets/setting-a1.js']);
    const steps: LaterFiles[] = [];
    await expect(bringLaterFiles(list, own, (step) => steps.push(step))).rejects.toThrow('404');
    expect([...own.files.keys()]).toEqual(['https://shop.example/assets/setting-a1.js']);
    expect(steps.at(-1)).toEqual({ is: 'coming', missing_bytes: 900 });
  });
});

describe('clearLaterFiles()', () => {
  it('takes out what no list names, and nothing else', async () => {
    const own = means([], ['assets/setting-a0.js', ...list.map(({ url }) => url)]);
    await clearLaterFiles(list, own.cache);
    expect([...own.files.keys()]).toEqual(list.map(({ url }) => `https://shop.example/${url}`));
  });
});
