import type { LotView } from '../../../stock/lot-list.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { Section } from '../../frame/section.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { useTexts } from '../../texts/texts.js';
import { writtenVolume } from '../amounts.js';

/** Where a lot came from and what it went into besides sessions. */
export function LotOrigin({ studioId, lot }: { studioId: string; lot: LotView }) {
  const texts = useTexts();
  const at = useStudioInstants(studioId);
  const area = { studioId, area: 'stock' } as const;
  const { deliveries, blendedFrom, blendedInto, cameFrom, wentTo } = lot;
  const isEmpty = [deliveries, blendedFrom, blendedInto, cameFrom, wentTo].every((list) => list.length === 0);
  const transfers = [
    ...cameFrom.map((one) => ({ ...one, name: texts.origin.cameFrom })),
    ...wentTo.map((one) => ({ ...one, name: texts.origin.wentTo(texts.transferStates[one.state]) })),
  ];
  return (
    <Section title={texts.origin.title} hint={texts.origin.hint}>
      {isEmpty && <p>{texts.origin.none}</p>}
      {!isEmpty && (
        <Entries label={texts.origin.title}>
          {deliveries.map((delivery) => (
            <Entry
              key={delivery.deliveryId}
              name={
                <PageLink alone to={pathOf(area, 'deliveries', delivery.deliveryId)}>
                  {texts.origin.delivery(texts.deliveryOrigins[delivery.origin], at(delivery.occurredAt))}
                </PageLink>
              }
            >
              <p>
                {[delivery.supplierName, delivery.reference, texts.amounts.pieces(delivery.quantityPieces)]
                  .filter((one) => one !== null)
                  .join(', ')}
              </p>
            </Entry>
          ))}
          {[
            ...blendedFrom.map((blend) => ({ ...blend, name: texts.origin.blendedFrom })),
            ...blendedInto.map((blend) => ({ ...blend, name: texts.origin.blendedInto })),
          ].map(({ lotId, microlitres, name }) => (
            <Entry
              key={`${name} ${lotId}`}
              name={
                <PageLink alone to={pathOf(area, 'lots', lotId)}>
                  {name}
                </PageLink>
              }
            >
              <p>{writtenVolume(microlitres, texts.language)}</p>
            </Entry>
          ))}
          {transfers.map(({ transferId, lineId, occurredAt, pieces, name }) => (
            <Entry key={`${transferId} ${lineId} ${name}`} name={name}>
              <p>
                {texts.amounts.pieces(pieces)}, {at(occurredAt)}
              </p>
            </Entry>
          ))}
        </Entries>
      )}
    </Section>
  );
}
