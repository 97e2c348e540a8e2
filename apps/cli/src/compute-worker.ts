import { parentPort } from 'node:worker_threads';
import { computeBatch } from '@becket/tasks/compute';

// A thread of the pool: lines in, answers out.
parentPort!.on('message', (lines: readonly string[]) => parentPort!.postMessage(computeBatch(lines)));
