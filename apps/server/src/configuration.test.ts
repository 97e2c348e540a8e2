import { describe, expect, it } from 'vitest';
import { configurationFrom, defaultPort } from './configuration.ts';

describe('configurationFrom()', () => {
  it('has a default for everything', () => {
    expect(configurationFrom({})).toEqual({
      host: '127.0.0.1',
      port: defaultPort,
      dataFolder: './data',
      withDemo: false,
    });
  });

  it('takes what the environment says', () => {
    expect(
      configurationFrom({ BECKET_HOST: '::1', BECKET_PORT: '0', BECKET_DATA: 'shop', BECKET_DEMO: '1' }),
    ).toEqual({ host: '::1', port: 0, dataFolder: 'shop', withDemo: true });
    for (const off of ['', '0', 'no', 'false'])
      expect(configurationFrom({ BECKET_DEMO: off }).withDemo).toBe(false);
  });

  it.each(['eighty', '-1', '65536', '80.5', '1e9'])('refuses the port %s in one sentence', (port) => {
    expect(() => configurationFrom({ BECKET_PORT: port })).toThrow(RangeError);
    expect(() => configurationFrom({ BECKET_PORT: port })).toThrow(new RegExp(`'${port}' was found`));
  });
});
