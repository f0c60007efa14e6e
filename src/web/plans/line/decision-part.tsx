import { Title } from '@mantine/core';
import type { PlanLineView } from '../../../reorder/plan/plans.views.js';
import { Section } from '../../frame/section.js';
import { type Figure, Figures } from '../../stock/figures.js';
import { Sign } from '../../stock/sign.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { writtenMoney } from '../figures/written-money.js';
import { writtenUnits } from '../figures/written-units.js';
import { standingOf } from '../line-entry.js';
import { lineSentence } from '../line-sentence.js';
import styles from '../plans.module.css';
import { reasonWords } from '../reason-words.js';

/** What was decided, and the reasons for it in order. */
export function DecisionPart({ line }: { line: PlanLineView }) {
  const texts = useTexts();
  const { language } = texts;
  const words = texts.planLine;
  const { item, decision, packs, costMinor, currency, orderOn, arrivesOn, arrivesLate } = line;
  const of = { unit: item.unit, currency };
  // What is said among the reasons is not said again.
  const remarks = line.remarks.filter(({ code }) => !line.reasons.some((reason) => reason.code === code));
  const day = (date: string) => writtenDay(date, language);
  const figures: (Figure | false)[] = [
    packs > 0 && {
      name: texts.plans.figures.order,
      value: `${texts.plans.packs(packs)}, ${writtenUnits(line.orderedUnits, item.unit, texts)}`,
      isMain: true,
    },
    packs > 0 &&
      costMinor !== null &&
      currency !== null && {
        name: texts.plans.figures.cost,
        value: writtenMoney(costMinor, currency, language),
        isMain: true,
      },
    orderOn !== null && { name: words.orderOn, value: day(orderOn) },
    arrivesOn !== null && { name: words.arrivesOn, value: day(arrivesOn) },
    arrivesLate !== null && { name: words.arrivesLate, value: day(arrivesLate) },
  ];
  return (
    <Section title={words.decision}>
      <p>
        <Sign standing={standingOf[decision]}>{texts.plans.decisions[decision]}</Sign>
      </p>
      <p className={styles.sentence}>{lineSentence(line, texts)}</p>
      <Figures figures={figures.filter((figure) => figure !== false)} />
      {line.reasons.length > 0 && (
        <>
          <Title order={3} className={styles.part}>
            {words.why}
          </Title>
          <ul>
            {line.reasons.map((reason) => (
              <li key={`${reason.code} ${reason.message}`}>{reasonWords(texts, reason, of)}</li>
            ))}
          </ul>
        </>
      )}
      {remarks.length > 0 && (
        <>
          <Title order={3} className={styles.part}>
            {words.remarks}
          </Title>
          <ul>
            {remarks.map((remark) => (
              <li key={`${remark.code} ${remark.message}`}>{reasonWords(texts, remark, of)}</li>
            ))}
          </ul>
        </>
      )}
    </Section>
  );
}
