import { existsSync, readFileSync } from 'node:fs';

const ticksPerSecond = 100;

function readProcessFile(pid: number | undefined, name: string): string | null {
  const file = `/proc/${pid}/${name}`;
  return existsSync(file) ? readFileSync(file, 'utf8') : null;
}

/** Resident memory of a process; null where the system does not tell it under /proc. */
export function residentMebibytes(pid: number | undefined): number | null {
  const [, kibibytes] = /VmRSS:\s+(\d+) kB/.exec(readProcessFile(pid, 'status') ?? '') ?? [];
  return kibibytes === undefined ? null : Number(kibibytes) / 1_024;
}

/** Processor time a process has taken so far, to the hundredth of a second; null where /proc does not tell it. */
export function processorMilliseconds(pid: number | undefined): number | null {
  const stat = readProcessFile(pid, 'stat');
  if (stat === null) return null;
  // The name, the second field, is in brackets and may hold spaces: user and system time are 12 and 13 behind it.
  const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  return ((Number(fields[11]) + Number(fields[12])) * 1_000) / ticksPerSecond;
}
