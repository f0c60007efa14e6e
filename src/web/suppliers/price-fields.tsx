import { Button, TextInput } from '@mantine/core';
import type { Edits } from '../frame/use-edits.js';
import type { ServiceProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import { type OfferDraft, pricesOf, type WrittenPrice } from './offer-draft.js';
import styles from './suppliers.module.css';

const mostPrices = 20;

/** What a pack costs, and what it costs when more are ordered. */
export function PriceFields({
  edits,
  currency,
  problem,
}: {
  edits: Edits<OfferDraft>;
  currency: string;
  problem: ServiceProblem | undefined;
}) {
  const texts = useTexts();
  const words = texts.suppliers;
  const prices = pricesOf(edits.draft);
  const set = (changed: WrittenPrice[]) => edits.set({ prices: JSON.stringify(changed) });
  const change = (index: number, price: Partial<WrittenPrice>) =>
    set(prices.map((each, at) => (at === index ? { ...each, ...price } : each)));
  const theirs = edits.meanwhile('prices');
  const fault = problem?.faultOf('prices');
  return (
    <fieldset className={styles.prices}>
      <legend>{words.prices}</legend>
      <p>{words.pricesHint}</p>
      {theirs !== undefined && (
        <p>
          {texts.settings.meanwhile(
            pricesOf({ prices: theirs })
              .map(({ packPrice }) => packPrice)
              .join(', '),
          )}
        </p>
      )}
      {fault !== undefined && <p role="alert">{fault}</p>}
      {prices.map(({ fromPacks, packPrice }, index) => (
        <div
          // biome-ignore lint/suspicious/noArrayIndexKey: prices have no name; they stand in this order.
          key={index}
          className={styles.price}
        >
          {index > 0 && (
            <TextInput
              label={words.fromPacks(index)}
              type="number"
              inputMode="numeric"
              min={1}
              max={10_000}
              step={1}
              required
              value={fromPacks}
              error={problem?.faultOf(`prices.${index}.fromPacks`)}
              onChange={(event) => change(index, { fromPacks: event.currentTarget.value })}
            />
          )}
          <TextInput
            label={index === 0 ? words.packPrice(currency) : words.packPriceThen(index, currency)}
            inputMode="decimal"
            autoComplete="off"
            required
            value={packPrice}
            error={
              problem?.faultOf(`prices.${index}.packPriceMinor`) ??
              (index === 0 ? problem?.faultOf('prices.0.fromPacks') : undefined)
            }
            onChange={(event) => change(index, { packPrice: event.currentTarget.value })}
          />
          {index > 0 && (
            <Button
              variant="default"
              aria-label={words.removePriceOf(index)}
              onClick={() => set(prices.filter((_, at) => at !== index))}
            >
              {words.removePrice}
            </Button>
          )}
        </div>
      ))}
      {prices.length < mostPrices && (
        <Button variant="subtle" onClick={() => set([...prices, { fromPacks: '', packPrice: '' }])}>
          {words.addPrice}
        </Button>
      )}
    </fieldset>
  );
}

/** Whether all that is wrong is with prices: it stands at their fields. */
export function isOfPrices(problem: ServiceProblem | undefined): boolean {
  const { faults = [] } = problem?.document ?? {};
  return faults.length > 0 && faults.every(({ field }) => /^prices[.]\d+[.]/.test(field));
}
