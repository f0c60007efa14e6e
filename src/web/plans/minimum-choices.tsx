import type { BasketView, MinimumChoiceView } from '../../reorder/plan/plans.views.js';
import type { Texts } from '../texts/en/english.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { writtenMoney } from './figures/written-money.js';
import styles from './plans.module.css';

/** What can be done where a supplier takes no order as small as this one. */
export function MinimumChoices({ basket }: { basket: BasketView }) {
  const texts = useTexts();
  const words = texts.plans;
  if (basket.minimumState !== 'not reached' || basket.minimumChoices.length === 0) return null;
  return (
    <>
      <p>{words.minimumChoicesTitle}:</p>
      <ul className={styles.choices}>
        {basket.minimumChoices.map((choice) => {
          const sentence = wordsOf(choice, basket, texts);
          return <li key={sentence}>{sentence}</li>;
        })}
      </ul>
    </>
  );
}

function wordsOf(choice: MinimumChoiceView, basket: BasketView, texts: Texts): string {
  const words = texts.plans.minimumChoices;
  const money = (minor: number | null) => writtenMoney(minor ?? 0, basket.currency, texts.language);
  switch (choice.choice) {
    case 'order anyway':
      return words.anyway(money(choice.missingMinor));
    case 'wait':
      return words.wait(writtenDay(choice.until ?? basket.on, texts.language), money(choice.extraMinor));
    case 'add': {
      const line = basket.lines.find(({ lineNumber }) => lineNumber === choice.lineNumber);
      return words.add(
        texts.plans.packs(choice.packs ?? 0),
        line?.label ?? texts.plans.lineNumber(choice.lineNumber ?? 0),
        money(choice.priceMinor),
      );
    }
  }
}
