import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ask, runServer, temporaryFolder } from './testing/running-server.ts';

function builtScreens(): string {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'dist', 'assets'), { recursive: true });
  const files = {
    'index.html': '<!doctype html><title>Becket</title>',
    'manifest.webmanifest': '{}',
    'sw.js': 'self.x = 1;',
    'icon.svg': '<svg xmlns="http://www.w3.org/2000/svg"/>',
    'assets/index-B7x1.js': 'export {};',
    'assets/index-B7x1.css': 'body {}',
    'assets/large-C9y2.js': `export const words = '${'as found '.repeat(500)}';`,
  };
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, 'dist', name), text);
  writeFileSync(join(folder, 'secret.txt'), 'secret');
  return join(folder, 'dist');
}

describe('the built screens', () => {
  it.each([
    ['/', 'text/html', 'no-cache'],
    ['/index.html', 'text/html', 'no-cache'],
    ['/sw.js', 'text/javascript', 'no-cache'],
    ['/manifest.webmanifest', 'application/manifest+json', 'no-cache'],
    ['/icon.svg', 'image/svg+xml', 'no-cache'],
    ['/assets/index-B7x1.js', 'text/javascript', 'public, max-age=31536000, immutable'],
    ['/assets/index-B7x1.css', 'text/css', 'public, max-age=31536000, immutable'],
  ])('%s is served as %s, to be kept as %s', async (path, type, keeping) => {
    const { url } = await runServer({ webRoot: builtScreens() });
    const { status, headers } = await ask(url + path);
    expect(status).toBe(200);
    expect(headers['content-type']).toContain(type);
    expect(headers['cache-control']).toBe(keeping);
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['content-security-policy']).toContain("default-src 'self'");
  });

  it('are sent packed to whoever unpacks them, and plain to whoever does not', async () => {
    const { url } = await runServer({ webRoot: builtScreens() });
    const path = `${url}/assets/large-C9y2.js`;
    const plain = await ask(path);
    expect(plain.headers['content-encoding']).toBeUndefined();
    expect(plain.headers.vary).toMatch(/accept-encoding/i);
    const packed = await fetch(path, { headers: { 'accept-encoding': 'gzip' } });
    expect(packed.headers.get('content-encoding')).toBe('gzip');
    expect(packed.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
    expect(await packed.text()).toBe(plain.text);
    const etag = packed.headers.get('etag')!;
    const again = await ask(path, { headers: { 'accept-encoding': 'gzip', 'if-none-match': etag } });
    expect([again.status, again.text]).toEqual([304, '']);
  });

  it('are not sent again when they have not changed', async () => {
    const { url } = await runServer({ webRoot: builtScreens() });
    const { headers } = await ask(`${url}/index.html`);
    const again = await ask(`${url}/index.html`, { headers: { 'if-none-match': headers.etag! } });
    expect([again.status, again.text]).toEqual([304, '']);
  });

  it('do not stand in the way of the routes, nor open the folder around them', async () => {
    const { url } = await runServer({ webRoot: builtScreens() });
    expect((await ask(`${url}/jobs`)).json).toEqual({ jobs: [] });
    for (const path of [
      '/secret.txt',
      '/../secret.txt',
      '/%2e%2e/secret.txt',
      '/assets/..%2f..%2fsecret.txt',
      '/x.js',
    ]) {
      const { status, json, text } = await ask(url + path);
      expect(status).toBe(404);
      expect(json).toMatchObject({ code: 'route-not-found' });
      expect(text).not.toContain('"secret"');
    }
    expect((await ask(`${url}/`, { method: 'POST' })).status).toBe(404);
  });

  it('say so when they are not built', async () => {
    const { url } = await runServer({ webRoot: join(temporaryFolder(), 'nothing') });
    const { status, json } = await ask(`${url}/`);
    expect(status).toBe(404);
    expect(json).toMatchObject({ message: expect.stringContaining('npm run build -w apps/web') });
  });
});
