/*
 * `npm test`: installs, finds or fetches a Chromium, and runs every test: the house's own checks, the unit and
 * property tests, and the end-to-end tests in the browser. Fails when any of them fails, or when none ran.
 */
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { buildWeb, findBrowser, install, requireNode, root, run } from './prepare.mjs';

requireNode();
await install();
const browser = await findBrowser();
await buildWeb();

const results = join(root, '.becket/results');
rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });
const unitFile = join(results, 'unit.json');
const browserFile = join(results, 'browser.json');

const okStatus = await run('node', ['tools/ok.mjs', '--without-tests']);
const unitStatus = await run('npx', [
  'vitest',
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${unitFile}`,
]);
const browserStatus = await run('npx', ['playwright', 'test', '-c', 'apps/web/playwright.config.ts'], {
  env: { ...process.env, BECKET_CHROMIUM: browser, PLAYWRIGHT_JSON_OUTPUT_NAME: browserFile },
});

const read = (file) => (existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined);
const unit = read(unitFile);
const e2e = read(browserFile);
const passed = (unit?.numPassedTests ?? 0) + (e2e?.stats.expected ?? 0);
const failed = (unit?.numFailedTests ?? 0) + (e2e?.stats.unexpected ?? 0) + (e2e?.stats.flaky ?? 0);
const skipped = (unit?.numPendingTests ?? 0) + (e2e?.stats.skipped ?? 0);
const ranBoth = (unit?.numPassedTests ?? 0) > 0 && (e2e?.stats.expected ?? 0) > 0;

const problems = [
  okStatus !== 0 && 'the house checks failed',
  unitStatus !== 0 && 'unit tests failed',
  browserStatus !== 0 && 'browser tests failed',
  !ranBoth && 'one kind of test did not run at all',
  failed > 0 && `${failed} tests failed`,
  skipped > 0 && `${skipped} tests were skipped`,
].filter(Boolean);
for (const problem of problems) console.error(`npm test: ${problem}`);
console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
process.exit(problems.length === 0 ? 0 : 1);
