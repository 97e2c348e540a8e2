/*
 * Set-up shared by `npm start` and `npm test`. Plain JavaScript: it runs before anything is installed.
 * Each step leaves a stamp in .becket/ and is skipped when nothing it depends on has changed.
 */
import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const stamps = join(root, '.becket');

/** Stops with one sentence. */
export function giveUp(sentence) {
  console.error(sentence);
  process.exit(1);
}

/** Runs a command with its talk passed through; resolves with its exit status. */
export function run(command, args, options = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { cwd: root, stdio: 'inherit', ...options });
    child.on('error', reject);
    child.on('exit', (code, signal) => resolve(code ?? (signal ? 1 : 0)));
  });
}

export function requireNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    giveUp(
      `Becket needs Node.js 20.19 or later; this is ${process.versions.node}. Install a current Node.js and try again.`,
    );
  }
}

function digest(paths) {
  const hash = createHash('sha256').update(process.version);
  const add = (path) => {
    if (!existsSync(path)) return;
    if (statSync(path).isDirectory()) {
      for (const name of readdirSync(path).sort()) {
        if (!['node_modules', 'dist', 'e2e'].includes(name) && !/\.test\.tsx?$/.test(name))
          add(join(path, name));
      }
    } else {
      hash.update(path.slice(root.length)).update(readFileSync(path));
    }
  };
  for (const path of paths) add(join(root, path));
  return hash.digest('hex');
}

/** Does `work` unless it was done before with the same inputs. */
async function once(name, inputs, isThere, work) {
  const stamp = join(stamps, `${name}.stamp`);
  const now = digest(inputs);
  if (isThere() && existsSync(stamp) && readFileSync(stamp, 'utf8') === now) return false;
  await work();
  mkdirSync(stamps, { recursive: true });
  writeFileSync(stamp, now);
  return true;
}

export async function install() {
  await once(
    'install',
    ['package-lock.json', 'package.json', '.npmrc'],
    () => existsSync(join(root, 'node_modules/.package-lock.json')),
    async () => {
      console.error('Installing what Becket is built with (once) …');
      const status = await run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error']);
      if (status !== 0)
        giveUp('Could not install: npm ci failed; its words stand above. Check the network and try again.');
    },
  );
}

export async function buildWeb() {
  await once(
    'web',
    ['apps/web', 'packages', 'package-lock.json'],
    () => existsSync(join(root, 'apps/web/dist/index.html')),
    async () => {
      console.error('Building the screens (once, until they change) …');
      const status = await run('npm', ['run', '--silent', 'build', '-w', 'apps/web'], {
        stdio: ['ignore', 2, 2],
      });
      if (status !== 0) giveUp('Could not build the web app; the reason stands above.');
    },
  );
}

const browserNames = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome'];

function browserOnPath() {
  for (const name of browserNames) {
    const found = spawnSync('sh', ['-c', `command -v ${name}`], { encoding: 'utf8' });
    if (found.status === 0 && found.stdout.trim() !== '') return found.stdout.trim();
  }
  return undefined;
}

/** Path of a Chromium for the tests: the one named, one on the path, the test tool's own, or one that the system's packages bring. */
export async function findBrowser() {
  const named = process.env.BECKET_CHROMIUM;
  if (named)
    return existsSync(named)
      ? named
      : giveUp(`BECKET_CHROMIUM names ${named}, which is not there. Name a Chromium, or leave it out.`);
  const onPath = browserOnPath();
  if (onPath) return onPath;

  console.error('Fetching a Chromium for the tests (once) …');
  const canUseApt = process.getuid?.() === 0 && spawnSync('sh', ['-c', 'command -v apt-get']).status === 0;
  if (canUseApt) {
    const lock = ['-o', 'DPkg::Lock::Timeout=300', '-qq'];
    const options = { stdio: ['ignore', 2, 2], env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } };
    await run('apt-get', [...lock, 'update'], options);
    await run('apt-get', [...lock, 'install', '-y', '--no-install-recommends', 'chromium'], options);
    const installed = browserOnPath();
    if (installed) return installed;
  }
  await run('npx', ['playwright', 'install', 'chromium'], { stdio: ['ignore', 2, 2] });
  const { chromium } = await import('@playwright/test');
  const own = chromium.executablePath();
  if (existsSync(own)) return own;
  return giveUp(
    'The tests need a Chromium: none was found, and none could be fetched. Install one, or name it in BECKET_CHROMIUM.',
  );
}
