import { Checkbox, Title } from '@mantine/core';
import type { MatchedLotView } from '../../../recalls/recalls.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import { MoreButton } from '../../frame/more-button.js';
import { nameOf, writtenAmount } from '../../stock/amounts.js';
import { Sign } from '../../stock/sign.js';
import { useShown } from '../../stock/use-shown.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { LotReasons } from './lot-reasons.js';
import styles from './matches.module.css';

/** The possible lots that are held too, one by one. */
export interface PossibleChoice {
  isHeld(lotId: string): boolean;
  hold(lotId: string, held: boolean): void;
}

/** The lots of one grade that a scope meets here, each with why, and what is here of it. */
export function MatchedLots({
  grade,
  count,
  lots,
  choice,
}: {
  grade: 'certain' | 'possible';
  /** All of them; `lots` may hold only the first thousand of both. */
  count: number;
  lots: readonly MatchedLotView[];
  /** Left out: they are not chosen one by one. */
  choice?: PossibleChoice | undefined;
}) {
  const texts = useTexts();
  const words = texts.matches;
  const list = useShown(lots);
  if (count === 0) return null;
  return (
    <div>
      <Title order={3} className={styles.grade}>
        {words.gradeTitles[grade](count)}
      </Title>
      <p className={styles.hint}>{words.gradeHints[grade]}</p>
      <Entries label={words.gradeTitles[grade](count)}>
        {list.shown.map((lot) => (
          <Entry
            key={lot.lotId}
            name={`${nameOf(lot)}, ${lot.code ?? words.noCode}`}
            actions={
              choice && (
                <Checkbox
                  label={words.holdIt}
                  aria-label={words.holdItOf(`${nameOf(lot)}, ${lot.code ?? words.noCode}`)}
                  checked={choice.isHeld(lot.lotId)}
                  onChange={(event) => choice.hold(lot.lotId, event.currentTarget.checked)}
                />
              )
            }
          >
            <p>
              {[
                lot.makerName,
                lot.useBy === null
                  ? texts.lot.noUseBy
                  : texts.lot.lastDay(writtenDay(lot.useBy, texts.language)),
              ].join(', ')}
            </p>
            <p>
              <Sign standing={grade === 'certain' ? 'fault' : 'care'}>{texts.grades[grade]}</Sign>
              {words.here(
                lot.containers,
                writtenAmount({ pieces: lot.onHandPieces, microlitres: lot.onHandMicrolitres }, texts),
              )}
              {'. '}
              {words.touched(lot.clients)}
            </p>
            <LotReasons reasons={lot.reasons} />
          </Entry>
        ))}
      </Entries>
      <MoreButton list={list} />
      {count > lots.length && <p className={styles.hint}>{words.notAll(lots.length, count)}</p>}
    </div>
  );
}
