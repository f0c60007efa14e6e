import { Title } from '@mantine/core';
import { useMemo, useState } from 'react';
import type { NoticeReading } from '../../../recalls/notice-reading/notice-reading.js';
import { useTexts } from '../../texts/texts.js';
import { MatchesSection } from '../matches/matches-section.js';
import { MarkedNotice, type MarkToShow } from '../reading/marked-notice.js';
import { markAt, marksOf } from '../reading/marks-of.js';
import { NoticeRemarks } from '../reading/notice-remarks.js';
import { ScopeFields } from '../scope/scope-fields.js';
import styles from './opening.module.css';
import type { TakenNotice } from './taken-notice.js';
import type { Settling } from './use-settling.js';

/** The text with what was read in it, beside it what is recalled, and below what is here of it. */
export function SettleParts({
  studioId,
  taken: { text, parts, remarks },
  settling,
}: {
  studioId: string;
  taken: TakenNotice;
  settling: Settling;
}) {
  const texts = useTexts();
  const [toShow, setToShow] = useState<MarkToShow>();
  const reading = { parts, remarks } as Pick<NoticeReading, 'parts' | 'remarks'>;
  // biome-ignore lint/correctness/useExhaustiveDependencies: of the very same reading.
  const marks = useMemo(() => marksOf(reading), [parts, remarks]);
  const hasText = text !== '';
  return (
    <>
      <div className={styles.beside} data-alone={!hasText || undefined}>
        {hasText && (
          <section aria-labelledby="notice-text">
            <Title order={2} id="notice-text" className={styles.title}>
              {texts.reading.text}
            </Title>
            <p className={styles.hint}>{texts.reading.textHint}</p>
            <NoticeRemarks
              remarks={remarks}
              onShow={(span) => {
                const mark = markAt(marks, span);
                if (mark !== undefined) setToShow({ mark });
              }}
            />
            <div className={styles.sticky}>
              <MarkedNotice text={text} marks={marks} toShow={toShow} />
            </div>
          </section>
        )}
        <section aria-labelledby="what-is-recalled">
          <Title order={2} id="what-is-recalled" className={styles.title}>
            {texts.scope.title}
          </Title>
          <p className={styles.hint}>{hasText ? texts.scope.titleHint : texts.scope.titleHintByHand}</p>
          <ScopeFields
            studioId={studioId}
            items={settling.items}
            met={settling.found.matches?.items ?? []}
            onChanged={settling.setItems}
            onShow={hasText ? (part) => setToShow({ mark: part }) : undefined}
          />
        </section>
      </div>
      <MatchesSection found={settling.found} isAsked={settling.scope !== null} choice={settling.choice} />
    </>
  );
}
