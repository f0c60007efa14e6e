import type { PlanLineView } from '../../../reorder/plan/plans.views.js';
import { Facts } from '../../frame/facts.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { Section } from '../../frame/section.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { writtenMoney } from '../figures/written-money.js';
import { writtenNumber, writtenUnits } from '../figures/written-units.js';
import numbers from '../numbers.module.css';

/** How it can be had: of whom, in which packs, at what price, and how long it takes. */
export function SupplySection({ studioId, line }: { studioId: string; line: PlanLineView }) {
  const texts = useTexts();
  const { language } = texts;
  const words = texts.planLine;
  const { item, supply, offers } = line;
  const { currency, packContainers, containerUnits, packPriceMinor, leadTime } = supply;
  const money = (minor: number) => (currency === null ? null : writtenMoney(minor, currency, language));
  const area = { studioId, area: 'ordering' } as const;
  const offerLink = (
    <PageLink
      to={
        supply.supplierId === null ? pathOf(area, 'suppliers') : pathOf(area, 'suppliers', supply.supplierId)
      }
      alone
    >
      {supply.supplierId === null ? texts.plans.addOffer : words.toSupplier(supply.supplierName ?? '')}
    </PageLink>
  );
  if (supply.offerId === null) {
    return (
      <Section title={words.supply}>
        <p>{words.noOffer}</p>
        {offerLink}
      </Section>
    );
  }
  return (
    <Section title={words.supply}>
      <Facts
        facts={[
          [words.supplier, supply.supplierName],
          [
            words.pack,
            packContainers !== null &&
              containerUnits !== null &&
              words.packOf(
                texts.plans.containers(packContainers),
                writtenUnits(packContainers * containerUnits, item.unit, texts),
              ),
          ],
          [
            words.minimumPacks,
            supply.minimumPacks !== null && supply.minimumPacks > 1 && texts.plans.packs(supply.minimumPacks),
          ],
          [words.packPrice, packPriceMinor !== null && money(packPriceMinor)],
          [
            words.unitPrice[item.unit],
            supply.unitPriceMinor !== null &&
              money(item.unit === 'microlitres' ? supply.unitPriceMinor * 1000 : supply.unitPriceMinor),
          ],
          [
            words.leadTime,
            leadTime !== null &&
              words.leadTimeOf(
                writtenNumber(Math.round(leadTime.meanDays * 10) / 10, language),
                leadTime.days95,
              ),
          ],
          [
            words.life,
            supply.lifeOnArrivalDays === null
              ? words.lifeUnlimited
              : texts.plans.days(supply.lifeOnArrivalDays),
          ],
        ]}
      />
      {offers.length > 1 && (
        <>
          <h3>{words.offers}</h3>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what can be moved sideways is moved by keys too. */}
          <section className={numbers.scroll} aria-label={words.offers} tabIndex={0}>
            <table className={numbers.table}>
              <thead>
                <tr>
                  <th scope="col">{words.supplier}</th>
                  <th scope="col" className={numbers.number}>
                    {words.bestWithIt}
                  </th>
                  <th scope="col" className={numbers.number}>
                    {words.expectedCost}
                  </th>
                </tr>
              </thead>
              <tbody>
                {offers.map((offer) => (
                  <tr key={offer.offerId} data-chosen={offer.offerId === supply.offerId || undefined}>
                    <th scope="row">{offer.supplierName}</th>
                    <td className={numbers.number}>
                      {offer.on === null
                        ? words.nothing
                        : `${texts.plans.packs(offer.packs)}, ${writtenDay(offer.on, language)}`}
                    </td>
                    <td className={numbers.number}>{money(offer.expectedCostMinor)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
        </>
      )}
      {offerLink}
    </Section>
  );
}
