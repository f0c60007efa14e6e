import type { SupplierTermsView } from '../../reorder/supply/supplier-terms.views.js';
import { Facts } from '../frame/facts.js';
import { writtenMoney } from '../plans/figures/written-money.js';
import { useTexts } from '../texts/texts.js';
import { wordsOfWeekdays } from './terms-words.js';

/** The terms, for who does not change them. */
export function TermsFacts({ terms }: { terms: SupplierTermsView }) {
  const texts = useTexts();
  const words = texts.suppliers;
  if (terms.version === null) return <p>{words.noTermsYet}</p>;
  const money = (minor: number | null) =>
    minor === null ? words.notKnown : writtenMoney(minor, terms.currency, texts.language);
  const { quotedLeadTimeDays, orderWeekdays } = terms;
  return (
    <Facts
      facts={[
        [words.quoted, quotedLeadTimeDays === null ? words.notKnown : words.days(quotedLeadTimeDays)],
        [
          words.orderDays,
          orderWeekdays.length === 0
            ? words.anyDay
            : wordsOfWeekdays(orderWeekdays, texts.language, 'long').join(', '),
        ],
        [words.minimum, money(terms.minimumOrderMinor)],
        [words.delivery, money(terms.deliveryCostMinor)],
        [words.free, money(terms.freeDeliveryFromMinor)],
      ]}
    />
  );
}
