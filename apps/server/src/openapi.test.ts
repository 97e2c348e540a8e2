import { readFileSync } from 'node:fs';
import { errorCodes } from '@becket/contract';
import { describe, expect, it } from 'vitest';
import { createApp } from './app.ts';
import { ask, nextId, runServer } from './testing/running-server.ts';

interface Document {
  openapi: string;
  paths: Record<
    string,
    Record<string, { operationId?: string; responses: Record<string, { description: string }> }>
  >;
  components: { schemas: Record<string, unknown> };
}

describe('/openapi.json', () => {
  it('speaks of every route there is, and of no other', async () => {
    const { url } = await runServer();
    const { json } = await ask<Document>(`${url}/openapi.json`);
    expect(json.openapi).toBe('3.1.0');
    const described = Object.entries(json.paths).flatMap(([path, methods]) =>
      Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`),
    );
    const { app } = createApp({ store: {} as never, now: () => new Date(0), newId: nextId });
    const served = app.routes
      .filter(({ method, path }) => method !== 'ALL' && !['/openapi.json', '/'].includes(path))
      .map(({ method, path }) => `${method} ${path.replace(/:(\w+)/g, '{$1}')}`);
    expect([...new Set(served)].sort()).toEqual(described.sort());
    expect(described).toHaveLength(14);
  });

  it('names every schema it refers to, and each once', async () => {
    const { url } = await runServer();
    const { text, json } = await ask<Document>(`${url}/openapi.json`);
    const names = new Set(Object.keys(json.components.schemas));
    const references = [...text.matchAll(/"\$ref":"([^"]+)"/g)].map(([, reference]) => reference!);
    expect(references.length).toBeGreaterThan(20);
    for (const reference of references) {
      expect(reference).toMatch(/^#\/components\/schemas\//);
      expect(names).toContain(reference.replace('#/components/schemas/', ''));
    }
    for (const name of [
      'Fact',
      'Entry',
      'EntriesPage',
      'ErrorAnswer',
      'ImportRequest',
      'JobState',
      'StripCheck',
    ])
      expect(names).toContain(name);
  });

  it('says for every refusal of a route with which codes it comes', async () => {
    const { url } = await runServer();
    const { json } = await ask<Document>(`${url}/openapi.json`);
    for (const methods of Object.values(json.paths)) {
      for (const { operationId, responses } of Object.values(methods)) {
        expect(operationId).toBeDefined();
        for (const [status, { description }] of Object.entries(responses)) {
          if (status.startsWith('2')) continue;
          const codes = Object.entries(errorCodes).filter(([, code]) => String(code.status) === status);
          expect(codes.some(([code]) => description.includes(`\`${code}\``))).toBe(true);
        }
      }
    }
  });

  it('and the reference page name the same routes and the same codes', async () => {
    const page = readFileSync(new URL('../../../docs/reference/http.md', import.meta.url), 'utf8');
    const { url } = await runServer();
    const { json } = await ask<Document>(`${url}/openapi.json`);
    const routes = Object.entries(json.paths).flatMap(([path, methods]) =>
      Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`),
    );
    const routesOfPage = [...page.matchAll(/^\| `([A-Z]+ \S+)` +\|/gm)].map(([, route]) => route!);
    expect(routesOfPage.sort()).toEqual([...routes, 'GET /openapi.json'].sort());
    const codesOfPage = [...page.matchAll(/^\| `([a-z-]+)` +\| (\d+) +\| (.*?) +\|$/gm)].map(
      ([, code, status, meaning]) => [code, { status: Number(status), meaning }],
    );
    expect(Object.fromEntries(codesOfPage)).toEqual(errorCodes);
  });
});
