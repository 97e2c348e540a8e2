import { describe, expect, it } from 'vitest';
import { isForThisComputerAlone, jobAddress } from './job-address.ts';
import { readRoute } from './route.ts';

describe('jobAddress()', () => {
  it('is an address that opens the job', () => {
    const address = jobAddress('01JABCDEFGHJKMNPQRSTVWXYZ0' as never, {
      origin: 'http://bench.shop.example:4780',
      pathname: '/',
    });
    expect(address).toBe('http://bench.shop.example:4780/#/job/01JABCDEFGHJKMNPQRSTVWXYZ0/record');
    expect(readRoute(new URL(address).hash)).toEqual({
      place: 'job',
      job: '01JABCDEFGHJKMNPQRSTVWXYZ0',
      task: 'record',
    });
  });
});

describe('isForThisComputerAlone()', () => {
  it.each(['localhost', 'becket.localhost', '127.0.0.1', '127.8.9.10', '[::1]'])('is so of %s', (host) => {
    expect(isForThisComputerAlone(host)).toBe(true);
  });
  it.each(['192.168.1.20', 'bench.local', 'localhost.example', '10.127.0.1', '[fe80::1]'])(
    'is not so of %s',
    (host) => {
      expect(isForThisComputerAlone(host)).toBe(false);
    },
  );
});
