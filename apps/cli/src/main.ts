import { english } from '@becket/core';
import { cliLanguage, localeAsked } from './cli-language.ts';
import { exitStatus } from './exit-status.ts';
import { becketProgram } from './program.ts';

// A reader that has seen enough, such as `head`, is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(exitStatus.done);
});

const args = process.argv.slice(2);
let language = english;
try {
  language = await cliLanguage(localeAsked(args, process.env));
  await (await becketProgram(args, language)).parseAsync();
} catch (error) {
  // Only now: a command that goes well starts without the list of what can go wrong.
  const { failureOf } = await import('./failure.ts');
  const { sentence, status, code, details } = failureOf(error, language);
  if (args.includes('--json'))
    process.stdout.write(`${JSON.stringify({ error: { code, message: sentence, details } })}\n`);
  process.stderr.write(`${sentence}\n`);
  process.exitCode = status;
}
