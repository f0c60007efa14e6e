/** How long a piece of work keeps the processor busy, in milliseconds, whatever else the machine does meanwhile. */
export async function processorMilliseconds(work: () => unknown): Promise<number> {
  const before = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1_000;
}
