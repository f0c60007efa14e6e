export const wait = (milliseconds: number) => new Promise((wake) => setTimeout(wake, milliseconds));

/**
 * Waits until something is there.
 * @throws when it does not come within so many milliseconds
 */
export async function until<Found>(
  what: string,
  look: () => Found | undefined | Promise<Found | undefined>,
  within = 30_000,
) {
  const deadline = Date.now() + within;
  while (Date.now() < deadline) {
    const found = await look();
    if (found !== undefined && found !== false) return found;
    await wait(50);
  }
  throw new Error(`This did not come in time: ${what}`);
}
