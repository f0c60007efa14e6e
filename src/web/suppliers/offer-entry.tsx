import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { OfferView } from '../../reorder/supply/offers.views.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Entry } from '../frame/entries.js';
import { useEdits } from '../frame/use-edits.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { ChangeForm } from '../settings/change-form.js';
import { Sign } from '../stock/sign.js';
import { useTexts } from '../texts/texts.js';
import { changeOfOffer, contentOfOffer, draftOfOffer, type OfferDraft } from './offer-draft.js';
import { OfferFields } from './offer-fields.js';
import { nameOfOffer, wordsOfOffer } from './offer-words.js';
import { isOfPrices } from './price-fields.js';
import { changeOffer, endOffer } from './suppliers.requests.js';
import { unreadableAmounts } from './unreadable-amounts.js';

/** One offer, with what can be changed of it. */
export function OfferEntry({
  studioId,
  offer,
  currency,
  mayPlan,
  onChanged,
}: {
  studioId: string;
  offer: OfferView;
  currency: string;
  mayPlan: boolean;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.suppliers;
  const [isChanging, setIsChanging] = useState(false);
  const ids = useRef(new RequestIds()).current;
  const { id: offerId, version, endedAt, productArchived, inStudioCurrency } = offer;
  const name = nameOfOffer(offer);
  const { packs, prices } = wordsOfOffer(offer, texts);
  const end = async () => {
    const id = ids.for({ offerId, version });
    await readAnewIfStale(() => endOffer(studioId, offerId, id, version), onChanged);
    await onChanged();
  };
  return (
    <Entry
      name={name}
      mark={endedAt === null ? undefined : words.ended}
      isOver={endedAt !== null}
      actions={
        mayPlan &&
        endedAt === null &&
        !isChanging && (
          <>
            {!productArchived && (
              <Button variant="default" aria-label={words.changeOf(name)} onClick={() => setIsChanging(true)}>
                {words.change}
              </Button>
            )}
            <ConfirmButton label={words.endOf(name)} question={words.endQuestion(name)} action={end}>
              {words.end}
            </ConfirmButton>
          </>
        )
      }
      below={
        isChanging && (
          <ChangeOfferForm
            studioId={studioId}
            offer={offer}
            currency={currency}
            title={words.changeOf(name)}
            onChanged={onChanged}
            onClose={() => setIsChanging(false)}
          />
        )
      }
    >
      <p>{packs}</p>
      <p>{prices}</p>
      {endedAt === null && !inStudioCurrency && (
        <p>
          <Sign standing="care">{words.notInCurrency(currency)}</Sign>
        </p>
      )}
      {endedAt === null && productArchived && (
        <p>
          <Sign standing="care">{words.productArchived}</Sign>
        </p>
      )}
    </Entry>
  );
}

function ChangeOfferForm({
  studioId,
  offer,
  currency,
  title,
  onChanged,
  onClose,
}: {
  studioId: string;
  offer: OfferView;
  currency: string;
  title: string;
  onChanged: () => Promise<void>;
  onClose: () => void;
}) {
  const texts = useTexts();
  const words = texts.suppliers;
  const edits = useEdits<OfferDraft>(draftOfOffer(offer, currency, texts.language));
  const { id: offerId, version, inStudioCurrency } = offer;
  const save = async (id: string) => {
    const { content, unreadable } = contentOfOffer(edits.draft, currency);
    if (content === undefined) throw unreadableAmounts(unreadable, words.noAmount(currency));
    await changeOffer(studioId, offerId, { id, version, ...changeOfOffer(content, edits.changes) });
  };
  return (
    <ChangeForm
      label={title}
      edits={edits}
      version={version}
      save={save}
      reload={onChanged}
      onClose={onClose}
      standsAtFields={isOfPrices}
    >
      {(problem) => (
        <>
          {!inStudioCurrency && <p>{words.pricesAnew(offer.currency, currency)}</p>}
          <OfferFields
            edits={edits}
            currency={currency}
            inBottles={offer.stockForm === 'container'}
            problem={problem}
          />
        </>
      )}
    </ChangeForm>
  );
}
