/** How a server is set up: from the environment, or from the command line. */
export interface Configuration {
  readonly host: string;
  readonly port: number;
  /** Folder that holds everything that is kept. */
  readonly dataFolder: string;
  /** Whether an invented piano is put into a store that has no job yet. */
  readonly withDemo: boolean;
}

export const defaultPort = 4780;

/**
 * The configuration in BECKET_HOST, BECKET_PORT, BECKET_DATA and BECKET_DEMO; what is not set has its default.
 * Throws: RangeError for a port that is none.
 */
export function configurationFrom(environment: Readonly<Record<string, string | undefined>>): Configuration {
  const { BECKET_HOST, BECKET_PORT, BECKET_DATA, BECKET_DEMO } = environment;
  const port = BECKET_PORT ? Number(BECKET_PORT) : defaultPort;
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new RangeError(
      `Cannot start: BECKET_PORT must be a whole number from 0 to 65535, '${BECKET_PORT}' was found. Set it to a free port, or leave it out for ${defaultPort}.`,
    );
  }
  return {
    host: BECKET_HOST || '127.0.0.1',
    port,
    dataFolder: BECKET_DATA || './data',
    withDemo: BECKET_DEMO !== undefined && !['', '0', 'no', 'false'].includes(BECKET_DEMO),
  };
}
