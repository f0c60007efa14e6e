import type { MixView } from '../../sessions/mixes.views.js';
import type { UseView } from '../../sessions/session-record.views.js';
import type { Texts } from '../texts/en/english.js';

/** How much was used, and into which cup it went. */
export function amountOf(
  { pieces, drops, microlitres, mixId }: UseView,
  mixes: readonly MixView[],
  texts: Texts,
): string {
  const mix = mixes.find(({ id }) => id === mixId);
  const amounts = [
    pieces > 0 && texts.session.pieces(pieces),
    drops !== null && texts.session.drops(drops),
    microlitres > 0 && texts.session.microlitres(microlitres.toLocaleString(texts.language)),
  ].filter((amount) => amount !== false);
  return [
    amounts.length === 0 ? texts.session.amountUnknown : amounts.join(', '),
    mix && texts.session.inMix(mix.label),
  ]
    .filter(Boolean)
    .join(', ');
}
