import type { PurchaseOrderSummaryView } from '../../reorder/purchase-orders/purchase-orders.views.js';
import { Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { writtenMoney } from '../plans/figures/written-money.js';
import { Sign } from '../stock/sign.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';

/** One order in a list. */
export function OrderEntry({ studioId, order }: { studioId: string; order: PurchaseOrderSummaryView }) {
  const texts = useTexts();
  const words = texts.orders;
  const { id, number, supplierName, state, lines, linesMinor, currency, unpricedLines } = order;
  const { expectedOn, late, mailState, endedAs } = order;
  return (
    <Entry
      name={words.orderOf(number, supplierName)}
      mark={words.states[state]}
      isOver={state === 'called off'}
      actions={
        <PageLink
          to={pathOf({ studioId, area: 'ordering' }, 'orders', id)}
          alone
          aria-label={words.openOf(number)}
        >
          {words.open}
        </PageLink>
      }
    >
      <p>
        {[
          words.lines(lines),
          writtenMoney(linesMinor, currency, texts.language),
          expectedOn !== null && words.expectedOn(writtenDay(expectedOn, texts.language)),
          endedAs !== null && words.endings[endedAs],
        ]
          .filter((part) => part !== false)
          .join(', ')}
      </p>
      {unpricedLines > 0 && <p>{words.unpriced(unpricedLines)}</p>}
      {late && (
        <p>
          <Sign standing="care">{words.late}</Sign>
        </p>
      )}
      {mailState === 'failed' && (
        <p>
          <Sign standing="fault">{words.mails.failed}</Sign>
        </p>
      )}
    </Entry>
  );
}
