/* `npm run ok`: types, lint, import arrows, examples, links, generated pages. With no argument, the unit tests as well. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { install, root, run } from './prepare.mjs';

await install();
const script = (name, ...args) => ['node', ['--import', 'tsx', `tools/${name}.ts`, ...args], name];
const steps = [
  ['npm', ['run', '--silent', 'types'], 'types'],
  ['npx', ['biome', 'check', '--error-on-warnings', '.'], 'lint'],
  script('check-imports'),
  script('check-words'),
  script('run-examples'),
  script('check-links'),
];
if (!process.argv.includes('--without-tests')) steps.push(['npx', ['vitest', 'run'], 'unit tests']);

let worst = 0;
for (const [command, args, name] of steps) {
  if (args[2]?.startsWith('tools/') && !existsSync(join(root, args[2]))) {
    console.error(`ok: ${args[2]} is not there`);
    worst = 1;
    continue;
  }
  const status = await run(command, args);
  if (status !== 0) {
    console.error(`ok: ${name} failed`);
    worst = 1;
  }
}
process.exit(worst);
