import { isProblem } from './problem.js';

/**
 * Changes something that is kept by versions. Where somebody else was faster it is read anew before the refusal is passed on,
 * so that the next try is made from what they left.
 */
export async function readAnewIfStale<Answer>(
  change: () => Promise<Answer>,
  readAnew: () => Promise<unknown>,
): Promise<Answer> {
  try {
    return await change();
  } catch (error) {
    if (isProblem(error, 'stale-version')) await readAnew();
    throw error;
  }
}
