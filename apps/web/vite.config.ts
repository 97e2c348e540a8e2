import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/** Where `npm run dev` finds the server's routes; the built app is served by that server itself. */
const server = process.env.BECKET_SERVER ?? 'http://127.0.0.1:4780';

/**
 * What is not needed to record at the piano: type-setting, its fonts, and the reader of papers. It is kept on the device after
 * the rest, so that a phone on a poor line works as soon as it can; see parts/later-files.ts.
 */
const laterNames = [
  'paper-worker',
  'paper-here',
  'pdfmake',
  'pdf',
  'pdf-reader-worker',
  'DejaVuSansCondensed',
];
const isLater = (url: string) =>
  laterNames.some((name) =>
    new RegExp(`^assets/${name}(-(Bold|Oblique|BoldOblique))?-[\\w-]{8}\\.(js|ttf)$`).test(url),
  );
/** The first step is to stay small [bytes]; a part that has grown large is to be fetched later or made smaller. */
const mostToStart = 3_400_000;

/** The files that are kept first, and the list of those that come later. */
function keptFirst(entries: readonly { url: string; revision: string | null; size: number }[]) {
  const later = entries.filter(({ url }) => isLater(url)).map(({ url, size }) => ({ url, bytes: size }));
  const first = entries.filter(({ url }) => !isLater(url));
  const absent = laterNames.filter((name) => !later.some(({ url }) => url.startsWith(`assets/${name}-`)));
  if (absent.length > 0)
    throw new Error(
      `No file is named ${absent.join(', ')} any more: say in vite.config.ts which files come later.`,
    );
  const toStart = first.reduce((sum, { size }) => sum + size, 0);
  if (toStart > mostToStart)
    throw new Error(
      `${toStart} bytes are kept before the program starts without a network, ${mostToStart} at most.`,
    );
  const list = JSON.stringify(later);
  writeFileSync(new URL('dist/kept-later.json', import.meta.url), list);
  // Only what may be kept for ever: the rest would be asked for again all the same.
  const forEver = first.map(({ url }) => url).filter((url) => url.startsWith('assets/'));
  writeFileSync(new URL('dist/kept-first.json', import.meta.url), JSON.stringify(forEver));
  const revision = createHash('sha256').update(list).digest('hex').slice(0, 32);
  return { manifest: [...first, { url: 'kept-later.json', revision, size: list.length }], warnings: [] };
}

/** Our packages only say what they export; what a page or a worker does not use of them is left out of it. */
const treeshake = { moduleSideEffects: [{ test: /\/packages\/[a-z]+\/src\//, sideEffects: false }] };

export default defineConfig({
  plugins: [
    react(),
    VitePWA({
      // A new version waits until it is asked for, so that nobody is interrupted in the middle of a reading.
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        name: 'Becket',
        short_name: 'Becket',
        description: 'The working record and the string science for restringing a piano.',
        lang: 'en',
        display: 'standalone',
        start_url: './',
        scope: './',
        background_color: '#f7f5f0',
        theme_color: '#f7f5f0',
        icons: [
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
          { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,png,woff2,ttf}'],
        manifestTransforms: [keptFirst],
        // A file under assets/ carries a digest of its content in its name: once it is here it is right for ever.
        runtimeCaching: [
          { urlPattern: /\/assets\//, handler: 'CacheFirst', options: { cacheName: 'kept-later' } },
        ],
        navigateFallback: 'index.html',
        navigateFallbackDenylist: [/^\/jobs/, /^\/blobs/, /^\/health/, /^\/openapi\.json/],
        cleanupOutdatedCaches: true,
        // The very first visit works without a network too; a later version still waits until it is asked for.
        clientsClaim: true,
      },
    }),
  ],
  worker: { format: 'es', rolldownOptions: { treeshake } },
  build: {
    target: 'es2023',
    outDir: 'dist',
    emptyOutDir: true,
    rolldownOptions: {
      treeshake,
      output: {
        codeSplitting: {
          groups: [
            // Apart from the schemas that are made with it: see main.ts.
            { name: 'zod', test: /node_modules\/zod\// },
            { name: 'react', test: /node_modules\/(react|react-dom|scheduler)\// },
          ],
        },
      },
    },
  },
  server: { proxy: { '/jobs': server, '/blobs': server, '/health': server, '/openapi.json': server } },
});
