import { Command } from 'commander';
import { registerBringIn } from './commands/bring-in.ts';
import { registerJobs } from './commands/jobs.ts';
import { registerNew } from './commands/new.ts';
import { registerPapers } from './commands/papers.ts';
import { registerScale } from './commands/scale.ts';
import { registerShow } from './commands/show.ts';
import { registerStripCheck } from './commands/strip-check.ts';
import { exitStatus } from './exit-status.ts';

/** The whole command line, as data for the parser. */
export function becketProgram(): Command {
  const program = new Command('becket')
    .description('the working record and the string science for restringing a piano')
    .option('--data <folder>', 'folder of the store', process.env.BECKET_DATA ?? './data')
    .option('--json', 'the result as JSON')
    .option('--by <name>', 'who is doing this; your name on this computer without it')
    .exitOverride((error) => {
      process.exit(error.exitCode === 0 ? exitStatus.done : exitStatus.wrongUse);
    })
    .showHelpAfterError('Try becket --help.');
  for (const register of [
    registerJobs,
    registerNew,
    registerBringIn,
    registerShow,
    registerStripCheck,
    registerScale,
    registerPapers,
  ]) {
    register(program);
  }
  return program;
}
