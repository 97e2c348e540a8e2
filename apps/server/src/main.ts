/*
 * Starts the server: configuration from the environment in, the address on stdout, talk on stderr.
 * Ends with status 0 when it is told to stop, with 1 and one sentence when it cannot start.
 */
import { configurationFrom } from './configuration.ts';
import { serveDataFolder } from './serve-data-folder.ts';

try {
  const server = await serveDataFolder(configurationFrom(process.env));
  console.log(`Becket is at ${server.url}/`);
  let isStopping = false;
  const stop = () => {
    if (isStopping) return;
    isStopping = true;
    server.stop().then(
      () => process.exit(0),
      (fault: unknown) => {
        console.error(fault);
        process.exit(1);
      },
    );
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, stop);
} catch (error) {
  const { name, message } = error as Error;
  const isExpected = ['AccountsNeeded', 'CannotListen', 'StoreUnavailable', 'RangeError'].includes(name);
  console.error(isExpected ? message : error);
  process.exit(1);
}
