import type { ClaimedGoodsView } from '../../reorder/claims/claims.views.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { lineName } from '../orders/line-name.js';
import { useTexts } from '../texts/texts.js';

/** What is claimed in a line, `Acme Brow Umber, lot 7A, 3 pieces`, and the delivery and order it is of. */
export function ClaimedGoods({
  studioId,
  goods,
  pieces,
}: {
  studioId: string;
  goods: ClaimedGoodsView;
  pieces: number;
}) {
  const words = useTexts().supplierClaims;
  const when = useStudioInstants(studioId);
  const { deliveryId, deliveredAt, orderId, orderNumber } = goods;
  const { lotCode } = goods;
  const product = nameOfGoods(goods);
  return (
    <>
      <p>
        {[product, lotCode !== null && words.lot(lotCode), words.pieces(pieces)]
          .filter((part) => part !== false && part !== null)
          .join(', ')}
      </p>
      {deliveryId !== null && deliveredAt !== null && (
        <p>
          <PageLink to={pathOf({ studioId, area: 'stock' }, 'deliveries', deliveryId)}>
            {words.deliveryOf(when(deliveredAt))}
          </PageLink>
        </p>
      )}
      {orderId !== null && orderNumber !== null && (
        <p>
          <PageLink to={pathOf({ studioId, area: 'ordering' }, 'orders', orderId)}>
            {words.order(orderNumber)}
          </PageLink>
        </p>
      )}
    </>
  );
}

/** `Acme Brow Umber`; null: no product is named. */
export function nameOfGoods({ makerName, productName, shade }: ClaimedGoodsView): string | null {
  if (productName === null) return null;
  return [makerName, lineName({ productName, shade })].filter((part) => part !== null).join(' ');
}
