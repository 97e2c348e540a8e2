import { english, type Language } from '@becket/core';
import { Command } from 'commander';
import { exitStatus } from './exit-status.ts';
import { helpIn, refusalIn } from './parser-words.ts';

type Register = (program: Command, language: Language) => void;

/** Every command by its name, in the order of the work. Each is loaded only when it is wanted, so that all start fast. */
const commands: Readonly<Record<string, () => Promise<Register>>> = {
  jobs: async () => (await import('./commands/jobs.ts')).registerJobs,
  new: async () => (await import('./commands/new.ts')).registerNew,
  demo: async () => (await import('./commands/demo.ts')).registerDemo,
  describe: async () => (await import('./commands/describe.ts')).registerDescribe,
  'bring-in': async () => (await import('./commands/bring-in.ts')).registerBringIn,
  show: async () => (await import('./commands/show.ts')).registerShow,
  'strip-check': async () => (await import('./commands/strip-check.ts')).registerStripCheck,
  sizes: async () => (await import('./commands/sizes.ts')).registerSizes,
  scale: async () => (await import('./commands/scale.ts')).registerScale,
  stock: async () => (await import('./commands/stock.ts')).registerStock,
  prices: async () => (await import('./commands/prices.ts')).registerPrices,
  orders: async () => (await import('./commands/orders.ts')).registerOrders,
  papers: async () => (await import('./commands/papers.ts')).registerPapers,
  export: async () => (await import('./commands/export.ts')).registerExport,
  'bring-in-job': async () => (await import('./commands/bring-in-job.ts')).registerBringInJob,
  compute: async () => (await import('./commands/compute.ts')).registerCompute,
  serve: async () => (await import('./commands/serve.ts')).registerServe,
};

export const commandNames: readonly string[] = Object.keys(commands);

/**
 * The command line, as data for the parser: the commands that the arguments name, or all of them when they name none,
 * as for the help.
 */
export async function becketProgram(args: readonly string[], language: Language = english): Promise<Command> {
  const { say } = language;
  const program = new Command('becket')
    .description(say('the working record and the string science for restringing a piano'))
    .configureHelp(helpIn(language))
    .configureOutput({ outputError: (text, write) => write(refusalIn(text, language)) })
    .helpOption('-h, --help', say('display help for command'))
    .option(
      '--data <folder>',
      say('folder of the store; BECKET_DATA without it'),
      process.env.BECKET_DATA || './data',
    )
    .option('--json', say('the result as JSON'))
    .option('--by <name>', say('who is doing this; your name on this computer without it'))
    .option(
      '--language <tag>',
      say(
        'what is said and written: en or de, with a country where its marks matter: de-AT; that of this computer without it, English with --json',
      ),
    )
    .exitOverride((error) => {
      process.exit(error.exitCode === 0 ? exitStatus.done : exitStatus.wrongUse);
    })
    .showHelpAfterError(say('Try becket --help.'));
  program.helpCommand('help [command]', say('display help for command'));
  // Any argument that is a command's name may be the command: a title or a folder of that name costs one more import.
  const named = commandNames.filter((name) => args.includes(name));
  const wanted = named.length === 0 || args[0] === 'help' ? commandNames : named;
  for (const name of wanted) (await commands[name]!())(program, language);
  return program;
}
