/* `npm start`: installs, builds, starts the server on 127.0.0.1 with SQLite in ./data, and prints the address. */
import { spawn } from 'node:child_process';
import { buildWeb, install, requireNode, root } from './prepare.mjs';

requireNode();
await install();
await buildWeb();
const server = spawn(process.execPath, ['--import', 'tsx', 'apps/server/src/main.ts'], {
  cwd: root,
  stdio: 'inherit',
  env: { BECKET_DATA: './data', BECKET_DEMO: '1', ...process.env },
});
// The server closes its database before it ends: pass the wish on, and wait for it.
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => server.kill(signal));
server.on('exit', (code, signal) => process.exit(code ?? (signal === null ? 0 : 1)));
