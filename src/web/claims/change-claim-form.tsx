import type { ShownClaimView } from '../../reorder/claims/claims.views.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useEdits } from '../frame/use-edits.js';
import { majorText } from '../plans/figures/minor-units.js';
import { useAnswer } from '../service/use-answer.js';
import { ChangeForm } from '../settings/change-form.js';
import { useTexts } from '../texts/texts.js';
import { contentOfClaim } from './claim-content.js';
import { type ClaimDraft, ClaimFields } from './claim-fields.js';
import { changeClaim, showClaim } from './claims.requests.js';
import { unreadableClaim } from './unreadable-claim.js';

interface Surroundings {
  studioId: string;
  currency: string;
  label: string;
  onChanged: () => Promise<void>;
  onClose: () => void;
}

/** Changes a claim that was not sent yet. Its note is asked for first: lists do not hold it. */
export function ChangeClaimForm({ claimId, ...around }: Surroundings & { claimId: string }) {
  const texts = useTexts();
  const { studioId } = around;
  const {
    answer: claim,
    problem,
    reload,
  } = useAnswer(['supplier claim', studioId, claimId], () => showClaim(studioId, claimId));
  if (!claim) {
    return problem ? <ProblemNote problem={problem} /> : <p role="status">{texts.app.loading}</p>;
  }
  return <ShownClaimForm {...around} claim={claim} reload={reload} />;
}

function ShownClaimForm({
  studioId,
  currency,
  label,
  claim,
  reload,
  onChanged,
  onClose,
}: Surroundings & { claim: ShownClaimView; reload: () => Promise<void> }) {
  const texts = useTexts();
  const words = texts.supplierClaims;
  const { id, version, pieces, amountMinor, note } = claim;
  const edits = useEdits<ClaimDraft>({
    pieces: String(pieces),
    amount: amountMinor === null ? '' : majorText(amountMinor, currency, texts.language),
    note: note ?? '',
  });
  const save = async (requestId: string) => {
    const made = contentOfClaim(edits.draft, currency);
    if ('unreadable' in made) {
      throw unreadableClaim(made.unreadable, { pieces: words.noCount, amount: words.noAmount(currency) });
    }
    const { content } = made;
    await changeClaim(studioId, id, requestId, {
      version,
      ...(edits.changes.pieces !== undefined && { pieces: content.pieces }),
      ...(edits.changes.amount !== undefined && { amountMinor: content.amountMinor }),
      ...(edits.changes.note !== undefined && { note: content.note }),
    });
  };
  const reloadAll = async () => {
    await Promise.all([reload(), onChanged()]);
  };
  return (
    <ChangeForm
      label={label}
      edits={edits}
      version={version}
      save={save}
      reload={reloadAll}
      onClose={onClose}
    >
      {(problem) => (
        <ClaimFields draft={edits.draft} currency={currency} problem={problem} onChange={edits.set} />
      )}
    </ChangeForm>
  );
}
