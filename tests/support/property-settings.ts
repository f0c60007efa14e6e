/** How long properties run, and from which seed; printed, so that what failed can be run again. */
export function propertySettings(name: string, usualRuns: number): { numRuns: number; seed: number } {
  const given = process.env.LOTWARD_SEED;
  const seed = given === undefined ? Date.now() % 2 ** 31 : Number(given);
  const numRuns = process.env.SOAK ? usualRuns * 20 : usualRuns;
  process.stdout.write(`${name}: ${numRuns} runs from seed ${seed} (LOTWARD_SEED=${seed} runs them again)\n`);
  return { numRuns, seed };
}
