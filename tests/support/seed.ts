/** Where nothing may fail by chance, as when a change lands, everything drawn is drawn from this. */
const fixed = 20_261_126;

/**
 * The seed of all that tests draw: `SEED` from the environment; a fixed one on build machines (`CI`); else a new one each
 * time, and always in the soak, which is there to find what no run before it found.
 */
export function seed(): number {
  if (process.env.SEED !== undefined) return Number(process.env.SEED);
  return isFixed() ? fixed : Math.floor(Math.random() * 2 ** 31);
}

/** Whether every run draws the same. */
export function isFixed(): boolean {
  return process.env.SEED !== undefined || (Boolean(process.env.CI) && !process.env.SOAK);
}
