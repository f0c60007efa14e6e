/**
 * The least that delivers through Redis: BullMQ itself, whose jobs are one HTTP call each and nothing else. It is told by a
 * file of JSON where, what and how many at once.
 */
import { readFileSync } from 'node:fs';
import { request } from 'node:http';
import { type Job, Worker } from 'bullmq';

export interface BareQueueInput {
  redisPort: number;
  queue: string;
  address: string;
  /** As long as what the service sends. */
  body: string;
  concurrency: number;
}

function post({ address, body }: BareQueueInput, id: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const sent = request(
      address,
      {
        method: 'POST',
        agent: false,
        headers: {
          'content-type': 'application/json',
          'content-length': Buffer.byteLength(body),
          'webhook-id': id,
        },
      },
      (answer) => {
        answer.resume();
        answer.once('end', resolve);
      },
    );
    sent.once('error', reject);
    sent.end(body);
  });
}

const input = JSON.parse(readFileSync(process.argv[2] ?? '', 'utf8')) as BareQueueInput;
const worker = new Worker(input.queue, (job: Job) => post(input, String(job.id)), {
  connection: { host: '127.0.0.1', port: input.redisPort },
  concurrency: input.concurrency,
});
await worker.waitUntilReady();
process.stdout.write('ready\n');
process.once('SIGTERM', () => void worker.close().then(() => process.exit(0)));
