import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/** Where `npm run dev` finds the server's routes; the built app is served by that server itself. */
const server = process.env.BECKET_SERVER ?? 'http://127.0.0.1:4780';

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
        navigateFallback: 'index.html',
        navigateFallbackDenylist: [/^\/jobs/, /^\/blobs/, /^\/health/, /^\/openapi\.json/],
        cleanupOutdatedCaches: true,
        // The very first visit works without a network too; a later version still waits until it is asked for.
        clientsClaim: true,
      },
    }),
  ],
  build: {
    target: 'es2023',
    outDir: 'dist',
    emptyOutDir: true,
    rolldownOptions: {
      // Our packages only say what they export; what a page does not use of them is left out of it.
      treeshake: { moduleSideEffects: [{ test: /\/packages\/[a-z]+\/src\//, sideEffects: false }] },
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
