import type { Edits } from '../frame/use-edits.js';
import type { ServiceProblem } from '../service/problem.js';
import { TextField } from '../settings/text-field.js';
import { useTexts } from '../texts/texts.js';
import type { OfferDraft } from './offer-draft.js';
import { PriceFields } from './price-fields.js';
import styles from './suppliers.module.css';

const mostCounted = 10_000;

/** Packs, prices and what else is known of an offer. */
export function OfferFields({
  edits,
  currency,
  inBottles,
  problem,
}: {
  edits: Edits<OfferDraft>;
  currency: string;
  /** The product is kept in single containers, so each is one piece. */
  inBottles: boolean;
  problem: ServiceProblem | undefined;
}) {
  const words = useTexts().suppliers;
  const count = { type: 'number', inputMode: 'numeric', step: 1, edits, problem } as const;
  const counted = { ...count, min: 1, max: mostCounted, required: true };
  return (
    <>
      <div className={styles.together}>
        <TextField
          {...counted}
          field="packContainers"
          label={inBottles ? words.packBottles : words.packBoxes}
        />
        {!inBottles && <TextField {...counted} field="containerPieces" label={words.boxPieces} />}
        <TextField {...counted} field="minimumPacks" label={words.minimumPacks} />
      </div>
      <PriceFields edits={edits} currency={currency} problem={problem} />
      <TextField
        edits={edits}
        problem={problem}
        field="orderCode"
        label={words.orderCode}
        description={words.orderCodeHint}
        maxLength={60}
      />
      <div className={styles.together}>
        <TextField
          {...count}
          field="lifeOnArrivalDays"
          label={words.lifeOnArrival}
          description={words.lifeOnArrivalHint}
          min={0}
          max={3650}
        />
        <TextField
          {...count}
          field="leadTimeDays"
          label={words.ownLeadTime}
          description={words.ownLeadTimeHint}
          min={0}
          max={365}
        />
      </div>
    </>
  );
}
