import { useRef, useState } from 'react';
import type { ClaimSuggestionView } from '../../reorder/claims/claims.views.js';
import { Fields } from '../frame/fields.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { majorText } from '../plans/figures/minor-units.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { contentOfClaim } from './claim-content.js';
import { type ClaimDraft, ClaimFields } from './claim-fields.js';
import { openClaim } from './claims.requests.js';
import { unreadableClaim } from './unreadable-claim.js';

/** Opens what was suggested as a claim. */
export function OpenClaimForm({
  studioId,
  suggestion,
  currency,
  label,
  onOpened,
  onCancel,
}: {
  studioId: string;
  suggestion: ClaimSuggestionView;
  /** The studio's: a claim is in it. */
  currency: string;
  label: string;
  onOpened: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const words = texts.supplierClaims;
  const { supplierId, orderLineId, deliveryLineId, lotId, reason, pieces, amountMinor } = suggestion;
  // What was paid in another currency is not an amount of this one.
  const isSameCurrency = amountMinor !== null && suggestion.currency === currency;
  const [draft, setDraft] = useState<ClaimDraft>({
    pieces: String(pieces),
    amount: isSameCurrency ? majorText(amountMinor, currency, texts.language) : '',
    note: '',
  });
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const made = contentOfClaim(draft, currency);
    if ('unreadable' in made) {
      throw unreadableClaim(made.unreadable, { pieces: words.noCount, amount: words.noAmount(currency) });
    }
    const claim = { supplierId, orderLineId, deliveryLineId, lotId, reason, ...made.content };
    await openClaim(studioId, ids.for(claim), claim);
    await onOpened();
  });
  return (
    <Fields onSubmit={() => void run()} label={label}>
      <ClaimFields
        draft={draft}
        currency={currency}
        problem={problem}
        onChange={(change) => setDraft((before) => ({ ...before, ...change }))}
      />
      <SaveOrCancel problem={problem} busy={busy} save={words.open} onCancel={onCancel} />
    </Fields>
  );
}
