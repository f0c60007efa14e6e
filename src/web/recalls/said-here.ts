import type { RecallView } from '../../recalls/recalls.views.js';

/** Whether what a recall is about is said in this studio: a chain's is said where it was opened, and followed elsewhere. */
export function isSaidHere(
  { chainWide, openedInStudioId }: Pick<RecallView, 'chainWide' | 'openedInStudioId'>,
  studioId: string,
): boolean {
  return !chainWide || openedInStudioId === studioId;
}
