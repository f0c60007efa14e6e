import type { Outcome } from '../../../sessions/completion-rules.js';
import type { TrayLineView } from '../../../sessions/tray.views.js';

const heldCodes: ReadonlySet<string> = new Set(['recalled', 'on hold']);

/** Whether it was put on hold after it was laid out: then it has to be said whether it was used. */
export function isHeld({ refusedNow }: Pick<TrayLineView, 'refusedNow'>): boolean {
  return refusedNow.some(({ code }) => heldCodes.has(code));
}

/**
 * What most likely became of something on the tray, as the service takes it when nothing is said: pieces were used, a
 * bottle was used when it is in a mix.
 * @returns null where it has to be said
 */
export function prefilledOutcome(
  line: Pick<TrayLineView, 'refusedNow' | 'stockForm' | 'containerId'>,
  mixedContainerIds: ReadonlySet<string>,
): Outcome | null {
  if (isHeld(line)) return null;
  return line.stockForm === 'pieces' || mixedContainerIds.has(line.containerId) ? 'used' : 'back unopened';
}
