import { Title } from '@mantine/core';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { PlanLineView } from '../../../reorder/plan/plans.views.js';
import { Facts } from '../../frame/facts.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { Section } from '../../frame/section.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { writtenMoney } from '../figures/written-money.js';
import { writtenNumber, writtenUnits } from '../figures/written-units.js';
import { NumbersTable } from '../numbers-table.js';
import styles from '../plans.module.css';

/** How it can be had: of whom, in which packs, at what price, and how long it takes. */
export function SupplySection({
  standing: { studioId, permissions },
  line,
}: {
  standing: StandingView;
  line: PlanLineView;
}) {
  const texts = useTexts();
  const { language } = texts;
  const words = texts.planLine;
  const { item, supply, offers } = line;
  const { currency, packContainers, containerUnits, packPriceMinor, leadTime } = supply;
  const money = (minor: number) => (currency === null ? null : writtenMoney(minor, currency, language));
  const area = { studioId, area: 'ordering' } as const;
  const offerLink = permissions.includes('plan orders') && (
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
              (item.unit === 'pieces'
                ? writtenUnits(packContainers * containerUnits, item.unit, texts)
                : words.packOf(
                    texts.plans.containers(packContainers),
                    writtenUnits(packContainers * containerUnits, item.unit, texts),
                  )),
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
          <Title order={3} className={styles.part}>
            {words.offers}
          </Title>
          <NumbersTable
            label={words.offers}
            first={words.supplier}
            columns={[words.bestWithIt, words.expectedCost]}
            rows={offers.map(({ offerId, supplierName, packs, on, expectedCostMinor }) => ({
              key: offerId,
              name: supplierName,
              cells: [
                on === null ? words.nothing : `${texts.plans.packs(packs)}, ${writtenDay(on, language)}`,
                money(expectedCostMinor),
              ],
              isMain: offerId === supply.offerId,
            }))}
          />
        </>
      )}
      {offerLink}
    </Section>
  );
}
