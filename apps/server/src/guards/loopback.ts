import type { MiddlewareHandler } from 'hono';
import { refuse } from '../answer-error.ts';

/** The server was asked to listen where others could reach it, and there are no accounts yet. */
export class AccountsNeeded extends Error {
  override readonly name = 'AccountsNeeded';
  constructor(host: string) {
    super(
      `Cannot listen on ${host}: others could reach the server there, which needs accounts, and this version has none. Listen on 127.0.0.1, ::1 or localhost.`,
    );
  }
}

/** Whether a host name or address means this computer itself. Source: RFC 6890 (127.0.0.0/8, ::1/128), RFC 6761 (localhost). */
export function isLoopback(host: string): boolean {
  const name = host.toLowerCase().replace(/^\[(.*)\]$/, '$1');
  return name === 'localhost' || name === '::1' || /^127(\.(25[0-5]|2[0-4]\d|1\d\d|[1-9]?\d)){3}$/.test(name);
}

/** Throws AccountsNeeded for any address but this computer's own. */
export function requireLoopback(host: string): void {
  if (!isLoopback(host)) throw new AccountsNeeded(host);
}

/**
 * Lets through only what this computer's own browser tabs and programs ask of this server itself.
 *
 * Without accounts the address is the only guard, and a page of another site, open in the same browser, can reach it too:
 * by its own name made to point here (the Host header gives it away), or by a request across sites (Origin and
 * Sec-Fetch-Site do). Following a link to the start page is allowed.
 * Sources: RFC 9110, 7.2 (Host); RFC 6454 (Origin); W3C Fetch Metadata Request Headers.
 */
export const onlyThisComputer: MiddlewareHandler = async (c, next) => {
  const host = c.req.header('host') ?? '';
  if (!isLoopback(hostName(host))) {
    return refuse(
      c,
      'host-not-allowed',
      `Cannot answer a request to '${host}': this server answers to 127.0.0.1, [::1] and localhost only. Use one of those in the address.`,
    );
  }
  const origin = c.req.header('origin');
  const site = c.req.header('sec-fetch-site');
  const isOwnPage = origin === undefined || origin === `http://${host}`;
  const isFollowedLink =
    c.req.method === 'GET' &&
    c.req.header('sec-fetch-mode') === 'navigate' &&
    c.req.header('sec-fetch-dest') === 'document';
  const isOwnSite = site === undefined || site === 'same-origin' || site === 'none' || isFollowedLink;
  if (!isOwnPage || !isOwnSite) {
    return refuse(
      c,
      'origin-not-allowed',
      `Cannot answer the page of another site (${origin ?? site}): only pages of this server may use it. Open http://${host}/ instead.`,
    );
  }
  return next();
};

/** The name in a Host header, without its port. */
function hostName(host: string): string {
  return host.replace(/:\d*$/, '');
}
