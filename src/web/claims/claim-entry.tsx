import { Button, Group } from '@mantine/core';
import { useRef, useState } from 'react';
import type { ClaimView } from '../../reorder/claims/claims.views.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Entry } from '../frame/entries.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { writtenMoney } from '../plans/figures/written-money.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { saveFile } from '../service/save-file.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { amountToAsk } from './amount-to-ask.js';
import { ChangeClaimForm } from './change-claim-form.js';
import { ClaimedGoods, nameOfGoods } from './claimed-goods.js';
import { type BareClaimStep, claimLetter, takeClaimStep } from './claims.requests.js';
import { OpenClaimForm } from './open-claim-form.js';
import { SettleClaimForm } from './settle-claim-form.js';

/** One claim: what is asked for, what came of it, and what can be done next. */
export function ClaimEntry({
  studioId,
  claim,
  currency,
  ours,
  mayPlace,
  onChanged,
}: {
  studioId: string;
  claim: ClaimView;
  /** Of the claim. */
  currency: string;
  /** The studio's. */
  ours: string;
  mayPlace: boolean;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.supplierClaims;
  const when = useStudioInstants(studioId);
  const { supplierName, reason, goods, pieces, state, amountMinor, settledMinor } = claim;
  const money = (minor: number) => writtenMoney(minor, currency, texts.language);
  return (
    <Entry
      name={words.against(supplierName, words.reasons[reason])}
      mark={words.states[state]}
      isOver={state === 'dropped'}
      below={
        mayPlace && (
          <ClaimSteps
            studioId={studioId}
            claim={claim}
            currency={currency}
            ours={ours}
            onChanged={onChanged}
          />
        )
      }
    >
      <ClaimedGoods studioId={studioId} goods={goods} pieces={pieces} />
      <p>
        {[
          amountMinor === null ? words.nothingAsked : words.asked(money(amountMinor)),
          state === 'settled' &&
            (settledMinor === null ? words.settledOtherwise : words.settledWith(money(settledMinor))),
        ]
          .filter((part) => part !== false)
          .join(' ')}
      </p>
      <p>
        {[
          words.openedAt(when(claim.createdAt)),
          claim.sentAt !== null && words.sentAt(when(claim.sentAt)),
          claim.endedAt !== null && words.endedAt(when(claim.endedAt)),
        ]
          .filter((part) => part !== false)
          .join(', ')}
      </p>
    </Entry>
  );
}

function ClaimSteps({
  studioId,
  claim,
  currency,
  ours,
  onChanged,
}: {
  studioId: string;
  claim: ClaimView;
  currency: string;
  ours: string;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.supplierClaims;
  const [form, setForm] = useState<'change' | 'settle' | 'again'>();
  const ids = useRef(new RequestIds()).current;
  const { id, version, steps, reason, goods, supplierName } = claim;
  const isEnded = claim.endedAt !== null;
  const name = words.claimOf(words.reasons[reason], nameOfGoods(goods) ?? supplierName);
  const letter = useAction(async () => saveFile(await claimLetter(studioId, id), `claim-${id}.txt`));
  const take = async (step: BareClaimStep) => {
    const given = { version };
    await readAnewIfStale(
      () => takeClaimStep(studioId, id, step, { id: ids.for({ step, ...given }), ...given }),
      onChanged,
    );
    await onChanged();
  };
  const around = { studioId, currency, onChanged };
  const close = () => setForm(undefined);
  if (form === 'change') {
    return <ChangeClaimForm {...around} claimId={id} label={words.changeOf(name)} onClose={close} />;
  }
  if (form === 'settle') {
    return <SettleClaimForm {...around} claim={claim} label={words.settleOf(name)} onCancel={close} />;
  }
  if (form === 'again') {
    const { supplierId, orderLineId, deliveryLineId, lotId, pieces } = claim;
    return (
      <OpenClaimForm
        studioId={studioId}
        claimed={{ supplierId, orderLineId, deliveryLineId, lotId, reason }}
        written={{ pieces: String(pieces), amount: amountToAsk(claim, ours, texts.language), note: '' }}
        currency={ours}
        label={words.againOf(name)}
        onOpened={async () => {
          close();
          await onChanged();
        }}
        onCancel={close}
      />
    );
  }
  return (
    <>
      <ProblemNote problem={letter.problem} />
      <Group gap="sm">
        <Button
          variant="default"
          loading={letter.busy}
          aria-label={words.letterOf(name)}
          onClick={() => void letter.run()}
        >
          {words.letter}
        </Button>
        {steps.includes('send') && (
          <ConfirmButton question={words.sendQuestion} label={words.sendOf(name)} action={() => take('send')}>
            {words.send}
          </ConfirmButton>
        )}
        {steps.includes('settle') && (
          <Button variant="default" aria-label={words.settleOf(name)} onClick={() => setForm('settle')}>
            {words.settle}
          </Button>
        )}
        {steps.includes('change') && (
          <Button variant="default" aria-label={words.changeOf(name)} onClick={() => setForm('change')}>
            {words.change}
          </Button>
        )}
        {steps.includes('drop') && (
          <ConfirmButton question={words.dropQuestion} label={words.dropOf(name)} action={() => take('drop')}>
            {words.drop}
          </ConfirmButton>
        )}
        {isEnded && (
          <Button variant="default" aria-label={words.againOf(name)} onClick={() => setForm('again')}>
            {words.again}
          </Button>
        )}
      </Group>
    </>
  );
}
