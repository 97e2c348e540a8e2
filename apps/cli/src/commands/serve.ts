import type { Language } from '@becket/core';
import type { Command } from 'commander';
import { WrongUse } from '../refusals.ts';
import { talk } from '../talk.ts';
import type { CommonOptions } from '../workshop.ts';

interface ServeOptions extends CommonOptions {
  readonly host: string;
  readonly port?: string;
  readonly demo?: boolean;
}

/** `becket serve`: serves the screens and the jobs of a data folder to this computer, until it is stopped. */
export function registerServe(program: Command, language: Language): void {
  const { say } = language;
  program
    .command('serve')
    .description(say('serve the screens and the jobs to this computer, until Ctrl+C'))
    .option(
      '--host <address>',
      say('address to listen on; only this computer can reach 127.0.0.1'),
      '127.0.0.1',
    )
    .option('--port <number>', say('port to listen on; 0 takes any that is free'))
    .option('--demo', say('put an invented piano in a store that has no job yet'))
    .action(async (_: unknown, command: Command) => {
      const options = command.optsWithGlobals<ServeOptions>();
      // Only now: the other commands start without it.
      const { defaultPort, serveDataFolder } = await import('@becket/server');
      const server = await serveDataFolder({
        host: options.host,
        port: portIn(options.port, defaultPort, language),
        dataFolder: options.data,
        withDemo: options.demo ?? false,
      });
      talk.result(options, { url: `${server.url}/` }, [
        say('Becket is at {address}', { address: `${server.url}/` }),
      ]);
      talk.tell(say('Stop it with Ctrl+C.'));
      await new Promise<void>((stopped) => {
        for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => stopped());
      });
      await server.stop();
    });
}

function portIn(text: string | undefined, standard: number, { say }: Language): number {
  const port = text === undefined ? standard : Number(text);
  if (Number.isInteger(port) && port >= 0 && port <= 65_535) return port;
  throw new WrongUse(
    say("Cannot serve: a port from 0 to 65535 is needed, '{text}' was found.", { text: text ?? '' }),
  );
}
