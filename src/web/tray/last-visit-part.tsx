import { productLabel } from '../../catalogue/product-label.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import styles from './last-visit.module.css';
import type { PartToRepeat } from './part-to-repeat.js';
import { pickOf } from './tray.requests.js';
import { writtenAmount } from './written-amounts.js';

/** One pigment of the last visit: whether it can be used again, and what it is taken from now. */
export function LastVisitPart({
  studioId,
  toRepeat: { part, noLonger, from, isOther },
}: {
  studioId: string;
  toRepeat: PartToRepeat;
}) {
  const texts = useTexts();
  const name = productLabel(part);
  return (
    <li className={styles.part}>
      <p className={styles.name}>{name}</p>
      <p className={styles.amount}>{writtenAmount(part, texts)}</p>
      <p>
        {texts.lastVisit.fromLot(part.lotCode)}
        {noLonger !== null && <strong className={styles.over}>{texts.lastVisit.noLonger[noLonger]}</strong>}
      </p>
      {from && (
        <p className={styles.now} data-other={isOther ?? undefined}>
          {isOther === 'lot'
            ? texts.lastVisit.otherLot(from.lotCode ?? from.labelCode)
            : isOther === 'bottle'
              ? texts.lastVisit.otherBottle(from.labelCode)
              : texts.lastVisit.onTray}
        </p>
      )}
      {!from && noLonger === null && <p className={styles.missing}>{texts.lastVisit.scanIt(part.lotCode)}</p>}
      {!from && noLonger !== null && <StandIn studioId={studioId} productId={part.productId} />}
    </li>
  );
}

/** What is here of the same product, first the one to take first. */
function StandIn({ studioId, productId }: { studioId: string; productId: string }) {
  const texts = useTexts();
  const { answer } = useAnswer(['pick', studioId, productId], () => pickOf(studioId, productId));
  if (!answer) return null;
  const [first] = answer.order;
  return (
    <p className={styles.missing}>
      {first ? texts.lastVisit.takeLot(first.lotCode, first.labelCode) : texts.lastVisit.nothingInstead}
    </p>
  );
}
