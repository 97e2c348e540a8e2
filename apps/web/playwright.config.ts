import { defineConfig } from '@playwright/test';
import { slownessOf } from './e2e/slow-pages.ts';

/** One real Chromium, one real server a test; see e2e/server.ts. */
export default defineConfig({
  testDir: './e2e',
  testMatch: '**/*.e2e.ts',
  outputDir: '../../test-results',
  workers: 1,
  retries: 0,
  forbidOnly: true,
  timeout: 120_000,
  expect: { timeout: 15_000 * slownessOf(process.env) },
  reporter: [['list'], ['json']],
  use: {
    // Country and language of the device, which units, paper and marks start from.
    locale: 'en-IE',
    viewport: { width: 820, height: 1180 },
    launchOptions: {
      executablePath: process.env.BECKET_CHROMIUM ?? '/usr/bin/chromium',
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
    acceptDownloads: true,
  },
});
