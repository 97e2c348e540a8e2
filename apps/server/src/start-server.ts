import type { Server } from 'node:http';
import { createAdaptorServer } from '@hono/node-server';
import { type AppParts, createApp } from './app.ts';
import { requireLoopback } from './guards/loopback.ts';

/** The port is taken, or may not be used. */
export class CannotListen extends Error {
  override readonly name = 'CannotListen';
}

export interface RunningServer {
  /** 'http://127.0.0.1:4780' */
  readonly url: string;
  /** Takes no more requests, ends the streams, lets what is under way finish, and resolves when all is closed. */
  readonly stop: () => Promise<void>;
}

/** How long a request under way may take after the server was told to stop. */
const patience_ms = 3000;

/**
 * Starts the server. Port 0 takes any free one.
 * Throws: AccountsNeeded for an address that others can reach; CannotListen when the port cannot be had.
 */
export async function startServer({
  host,
  port,
  ...parts
}: AppParts & { readonly host: string; readonly port: number }): Promise<RunningServer> {
  requireLoopback(host);
  const { app, stopStreams } = createApp(parts);
  const server = createAdaptorServer({ fetch: app.fetch }) as Server;
  // By number, so that no file of host names can make 'localhost' another place.
  const address = host.toLowerCase() === 'localhost' ? '127.0.0.1' : host.replace(/^\[(.*)\]$/, '$1');
  await new Promise<void>((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      const reason =
        error.code === 'EADDRINUSE'
          ? 'another program has that port, perhaps another Becket'
          : `the system does not allow it (${error.message})`;
      reject(
        new CannotListen(
          `Cannot listen on ${host} port ${port}: ${reason}. Stop it, or set BECKET_PORT to another port.`,
          {
            cause: error,
          },
        ),
      );
    });
    server.listen(port, address, resolve);
  });
  const listening = server.address();
  const actualPort = typeof listening === 'object' && listening !== null ? listening.port : port;
  return {
    url: `http://${address.includes(':') ? `[${address}]` : address}:${actualPort}`,
    stop: async () => {
      stopStreams();
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      server.closeIdleConnections();
      const late = setTimeout(() => server.closeAllConnections(), patience_ms);
      await closed;
      clearTimeout(late);
    },
  };
}
