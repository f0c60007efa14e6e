import type { PurchaseOrderView } from '../../reorder/purchase-orders/purchase-orders.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { writtenMoney } from '../plans/figures/written-money.js';
import { Sign } from '../stock/sign.js';
import { useTexts } from '../texts/texts.js';
import { lineName } from './line-name.js';

/** What is ordered, and how much of it came. */
export function OrderLines({ order }: { order: PurchaseOrderView }) {
  const texts = useTexts();
  const words = texts.orders;
  if (order.lines.length === 0) return <p>{words.noLines}</p>;
  return (
    <Entries label={words.whatIsOrdered}>
      {order.lines.map((line) => (
        <Entry key={line.id} name={`${line.makerName} ${lineName(line)}`}>
          <p>
            {[
              words.packs(line.packs),
              words.packOf(line.packContainers, line.containerPieces),
              line.lineMinor !== null && writtenMoney(line.lineMinor, order.currency, texts.language),
              line.orderCode !== null && words.code(line.orderCode),
            ]
              .filter((part) => part !== false)
              .join(', ')}
          </p>
          {order.sentAt !== null && (
            <p>
              {words.came(line.receivedPieces, line.orderedPieces)}
              {line.outstandingPieces > 0 &&
                order.endedAs === null &&
                `, ${words.outstanding(line.outstandingPieces)}`}
            </p>
          )}
          {line.productArchived && (
            <p>
              <Sign standing="care">{words.archived}</Sign>
            </p>
          )}
        </Entry>
      ))}
    </Entries>
  );
}
