import { seed as chosenSeed } from './seed.js';

/** How long properties run, and from which seed; printed, so that what failed can be run again. */
export function propertySettings(name: string, usualRuns: number): { numRuns: number; seed: number } {
  const seed = chosenSeed();
  const numRuns = process.env.SOAK ? usualRuns * 20 : usualRuns;
  process.stdout.write(`${name}: ${numRuns} runs, SEED=${seed}\n`);
  return { numRuns, seed };
}
