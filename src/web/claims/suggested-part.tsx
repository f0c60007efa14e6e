import { Button } from '@mantine/core';
import { useState } from 'react';
import type { ClaimSuggestionView, ShortDateView } from '../../reorder/claims/claims.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { ProblemNote } from '../frame/problem-note.js';
import { writtenMoney } from '../plans/figures/written-money.js';
import { useAnswer } from '../service/use-answer.js';
import type { Texts } from '../texts/en/english.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { amountToAsk } from './amount-to-ask.js';
import { ClaimedGoods, nameOfGoods } from './claimed-goods.js';
import { suggestedClaims } from './claims.requests.js';
import { OpenClaimForm } from './open-claim-form.js';

/** What deliveries and closed orders give reason to claim; each is opened with what is asked for, and a note. */
export function SuggestedPart({
  studioId,
  currency,
  mayOpen,
  onOpened,
}: {
  studioId: string;
  currency: string;
  mayOpen: boolean;
  onOpened: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.supplierClaims;
  const { answer, problem, reload } = useAnswer(['suggested claims', studioId], () =>
    suggestedClaims(studioId),
  );
  if (answer === undefined) {
    return problem ? <ProblemNote problem={problem} /> : <p role="status">{texts.app.loading}</p>;
  }
  const opened = async () => {
    await Promise.all([reload(), onOpened()]);
  };
  return (
    <>
      <ProblemNote problem={problem} />
      {answer.items.length === 0 && <p role="status">{words.noneSuggested}</p>}
      {answer.items.length > 0 && (
        <Entries label={words.suggested}>
          {answer.items.map((suggestion) => (
            <SuggestionEntry
              key={keyOf(suggestion)}
              studioId={studioId}
              suggestion={suggestion}
              currency={currency}
              mayOpen={mayOpen}
              onOpened={opened}
            />
          ))}
        </Entries>
      )}
      {answer.more && <p>{words.moreSuggested}</p>}
    </>
  );
}

function wordsOfDate({ useBy, daysLeft, promisedDays }: ShortDateView, texts: Texts): string {
  const words = texts.supplierClaims;
  const day = writtenDay(useBy, texts.language);
  return daysLeft < 0 || promisedDays === null
    ? words.pastDate(day)
    : words.shortDate(day, daysLeft, promisedDays);
}

const keyOf = ({ reason, orderLineId, deliveryLineId, lotId }: ClaimSuggestionView) =>
  [reason, orderLineId, deliveryLineId, lotId].join(' ');

function SuggestionEntry({
  studioId,
  suggestion,
  currency,
  mayOpen,
  onOpened,
}: {
  studioId: string;
  suggestion: ClaimSuggestionView;
  currency: string;
  mayOpen: boolean;
  onOpened: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.supplierClaims;
  const [isOpening, setIsOpening] = useState(false);
  const { supplierId, supplierName, orderLineId, deliveryLineId, lotId } = suggestion;
  const { reason, goods, pieces, amountMinor, shortDate } = suggestion;
  const name = words.claimOf(words.reasons[reason], nameOfGoods(goods) ?? supplierName);
  return (
    <Entry
      name={words.against(supplierName, words.reasons[reason])}
      actions={
        mayOpen &&
        !isOpening && (
          <Button variant="default" aria-label={words.openOf(name)} onClick={() => setIsOpening(true)}>
            {words.open}
          </Button>
        )
      }
      below={
        isOpening && (
          <OpenClaimForm
            studioId={studioId}
            claimed={{ supplierId, orderLineId, deliveryLineId, lotId, reason }}
            written={{
              pieces: String(pieces),
              amount: amountToAsk(suggestion, currency, texts.language),
              note: '',
            }}
            currency={currency}
            label={words.openOf(name)}
            onOpened={onOpened}
            onCancel={() => setIsOpening(false)}
          />
        )
      }
    >
      <ClaimedGoods studioId={studioId} goods={goods} pieces={pieces} />
      {/* Of the others the heading and the pieces say it all. */}
      {shortDate !== null && <p>{wordsOfDate(shortDate, texts)}</p>}
      <p>
        {amountMinor === null
          ? words.costNotKnown
          : words.cost(writtenMoney(amountMinor, suggestion.currency ?? currency, texts.language))}
      </p>
    </Entry>
  );
}
