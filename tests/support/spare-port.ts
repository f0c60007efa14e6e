import { createServer } from 'node:net';

/** Below the ports that the system hands out, so that nothing takes one while its server is down. */
const ports = { first: 15_000, last: 32_000 };
/** Each process that runs tests has its own, so that none takes what another found free. */
const ofProcess = 500;

let given = 0;

/** A port on loopback for a server that is ended and comes back at the same one. */
export async function sparePort(): Promise<number> {
  const begin = ports.first + ((process.pid * ofProcess) % (ports.last - ports.first));
  for (;;) {
    const port = begin + (given++ % ofProcess);
    if (await isFree(port)) return port;
  }
}

function isFree(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const server = createServer();
    server.once('error', () => resolve(false));
    server.listen(port, '127.0.0.1', () => server.close(() => resolve(true)));
  });
}
