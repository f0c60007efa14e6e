import { useRef, useState } from 'react';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { isProblem } from '../service/problem.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { contentOfClaim } from './claim-content.js';
import { type ClaimDraft, ClaimFields } from './claim-fields.js';
import { type NewClaim, openClaim } from './claims.requests.js';
import { unreadableClaim } from './unreadable-claim.js';

/** What a claim names, and why; without pieces, amount and note. */
export type ClaimedFor = Pick<NewClaim, 'supplierId' | 'orderLineId' | 'deliveryLineId' | 'lotId' | 'reason'>;

/** Opens a claim. The same goods are claimed again for the same reason on purpose only. */
export function OpenClaimForm({
  studioId,
  claimed,
  written,
  currency,
  label,
  onOpened,
  onCancel,
}: {
  studioId: string;
  claimed: ClaimedFor;
  /** What stands in the fields to begin with. */
  written: ClaimDraft;
  /** The studio's: a claim is in it. */
  currency: string;
  label: string;
  onOpened: () => Promise<void>;
  onCancel: () => void;
}) {
  const words = useTexts().supplierClaims;
  const [draft, setDraft] = useState(written);
  const ids = useRef(new RequestIds()).current;
  const asked = useRef('');
  const { run, busy, problem } = useAction(async (again: boolean) => {
    const made = contentOfClaim(draft, currency);
    if ('unreadable' in made) {
      throw unreadableClaim(made.unreadable, { pieces: words.noCount, amount: words.noAmount(currency) });
    }
    const claim = { ...claimed, ...made.content, ...(again && { again }) };
    asked.current = JSON.stringify(claimed);
    await openClaim(studioId, ids.for(claim), claim);
    await onOpened();
  });
  // What is claimed now may be another thing than what was refused.
  const isStanding = isProblem(problem, 'already-exists') && asked.current === JSON.stringify(claimed);
  return (
    <Fields onSubmit={() => void run(isStanding)} label={label}>
      <ClaimFields
        draft={draft}
        currency={currency}
        problem={problem}
        onChange={(change) => setDraft((before) => ({ ...before, ...change }))}
      />
      {isStanding && (
        <Note kind="fault">
          <p>{words.claimedAlready}</p>
        </Note>
      )}
      <SaveOrCancel
        problem={isProblem(problem, 'already-exists') ? undefined : problem}
        busy={busy}
        save={isStanding ? words.openAnother : words.open}
        onCancel={onCancel}
      />
    </Fields>
  );
}
