import type { OfferView } from '../../reorder/supply/offers.views.js';
import { PagedEntries } from '../frame/paged-entries.js';
import { Section } from '../frame/section.js';
import { usePages } from '../service/use-pages.js';
import { useTexts } from '../texts/texts.js';
import { AddOffer } from './add-offer.js';
import { OfferEntry } from './offer-entry.js';
import { listOffers } from './suppliers.requests.js';

/** What a supplier offers, and offered before. */
export function OffersPart({
  studioId,
  supplierId,
  currency,
  mayPlan,
  onChanged,
}: {
  studioId: string;
  supplierId: string;
  currency: string;
  mayPlan: boolean;
  onChanged: () => Promise<void>;
}) {
  const words = useTexts().suppliers;
  const offered = usePages(['offers', studioId, supplierId, 'offered'], (after) =>
    listOffers(studioId, supplierId, 'offered', after),
  );
  const ended = usePages(['offers', studioId, supplierId, 'ended'], (after) =>
    listOffers(studioId, supplierId, 'ended', after),
  );
  const reload = async () => {
    await Promise.all([offered.reload(), ended.reload(), onChanged()]);
  };
  const entry = (offer: OfferView) => (
    <OfferEntry
      key={offer.id}
      studioId={studioId}
      offer={offer}
      currency={currency}
      mayPlan={mayPlan}
      onChanged={reload}
    />
  );
  return (
    <>
      <Section title={words.offered} hint={words.offeredHint}>
        <PagedEntries
          label={words.offered}
          list={offered}
          none={mayPlan ? words.noneOffered : words.noneOfferedRead}
          entry={entry}
        />
      </Section>
      {mayPlan && (
        <Section title={words.addOffer} hint={words.addOfferHint}>
          <AddOffer studioId={studioId} supplierId={supplierId} currency={currency} onAdded={reload} />
        </Section>
      )}
      {(ended.items?.length ?? 0) > 0 && (
        <Section title={words.endedOffers}>
          <PagedEntries label={words.endedOffers} list={ended} none="" entry={entry} />
        </Section>
      )}
    </>
  );
}
