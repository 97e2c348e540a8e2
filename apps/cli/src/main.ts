import { failureOf } from './failure.ts';
import { becketProgram } from './program.ts';

try {
  await becketProgram().parseAsync();
} catch (error) {
  const { sentence, status, code, details } = failureOf(error);
  if (process.argv.includes('--json'))
    process.stdout.write(`${JSON.stringify({ error: { code, message: sentence, details } })}\n`);
  process.stderr.write(`${sentence}\n`);
  process.exitCode = status;
}
