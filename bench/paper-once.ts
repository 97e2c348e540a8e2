/*
 * Makes one paper of the demo grand in a process of its own and writes how long the first and the next ones took, by the clock and
 * of the processor, and how large it is, as one line of JSON. Run by `papers.bench.ts`: only a new process has a cold start.
 *
 *   node --import tsx bench/paper-once.ts <paper> <pdf|csv> <how often>
 */
import { minorUnits } from '@becket/core';
import { newUlid } from '@becket/journal';
import { createMemoryStore } from '@becket/store/memory';
import { draftEstimate, makeEstimate, makePaper, openDemoJob, type PaperName } from '@becket/tasks';

const [paper, format, often] = process.argv.slice(2) as [PaperName, 'pdf' | 'csv', string];
let tick = 0;
const context = {
  store: createMemoryStore(),
  now: () => new Date('2026-03-01T10:00:00Z'),
  newId: () => newUlid(new Date(1_700_000_000_000 + tick++), () => 0.5),
  by: 'bench',
  device: 'bench',
};
const job = await openDemoJob(context);
const price = minorUnits(950);
const { lines } = draftEstimate(job, {
  rates: {
    currency: 'EUR',
    pricesIncludeTax: false,
    hourlyRate: minorUnits(6800),
    labourTax_basisPoints: 1900,
    materialsTax_basisPoints: 1900,
    unitPrices: { 'tuning-pins': price, 'plain-wire': price, 'bass-strings': price, felts: price },
  },
});
await makeEstimate(context, job.id, { currency: 'EUR', pricesIncludeTax: false, lines: [...lines] });

const times: number[] = [];
// Of all threads, which a busy machine leaves as it is.
const processor: number[] = [];
let size = 0;
for (let turn = 0; turn < Number(often); turn += 1) {
  const start = performance.now();
  const before = process.cpuUsage();
  size = (await makePaper(context, job.id, { paper, format })).bytes.length;
  times.push(performance.now() - start);
  const { user, system } = process.cpuUsage(before);
  processor.push((user + system) / 1000);
}
console.log(JSON.stringify({ times, processor, size }));
