import { TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { ClaimView } from '../../reorder/claims/claims.views.js';
import { Fields } from '../frame/fields.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { majorText, minorUnits } from '../plans/figures/minor-units.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { unreadableAmounts } from '../suppliers/unreadable-amounts.js';
import { useTexts } from '../texts/texts.js';
import { settleClaim } from './claims.requests.js';

/** The supplier made it good: with how much money, or with goods. */
export function SettleClaimForm({
  studioId,
  claim: { id, version, amountMinor },
  currency,
  label,
  onChanged,
  onCancel,
}: {
  studioId: string;
  claim: ClaimView;
  currency: string;
  label: string;
  onChanged: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const words = texts.supplierClaims;
  const [amount, setAmount] = useState(
    amountMinor === null ? '' : majorText(amountMinor, currency, texts.language),
  );
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const settledMinor = minorUnits(amount, currency);
    if (settledMinor === undefined) throw unreadableAmounts(['settled'], words.noAmount(currency));
    const settling = { version, settledMinor };
    await readAnewIfStale(() => settleClaim(studioId, id, { id: ids.for(settling), ...settling }), onChanged);
    await onChanged();
  });
  return (
    <Fields onSubmit={() => void run()} label={label}>
      <TextInput
        label={words.settledIn(currency)}
        description={words.settledHint}
        inputMode="decimal"
        autoComplete="off"
        value={amount}
        error={problem?.faultOf('settled') ?? problem?.faultOf('settledMinor')}
        onChange={(event) => setAmount(event.currentTarget.value)}
      />
      <SaveOrCancel problem={problem} busy={busy} save={words.settle} onCancel={onCancel} />
    </Fields>
  );
}
