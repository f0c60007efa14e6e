import { Button } from '@mantine/core';
import type { NoticeRemarkView, TextSpanView } from '../../../recalls/recalls.views.js';
import { MoreButton } from '../../frame/more-button.js';
import { useShown } from '../../stock/use-shown.js';
import { useTexts } from '../../texts/texts.js';
import styles from './notice-remarks.module.css';

/** What a person has to look at in a notice that was read. */
export function NoticeRemarks({
  remarks,
  onShow,
}: {
  remarks: readonly NoticeRemarkView[];
  onShow: (span: TextSpanView) => void;
}) {
  const texts = useTexts();
  const list = useShown(remarks);
  if (remarks.length === 0) return null;
  return (
    <div className={styles.remarks}>
      <h3 className={styles.title}>{texts.reading.remarks}</h3>
      <ul>
        {list.shown.map(({ code, message, facts, span }, index) => {
          const own = texts.noticeRemarks[code]?.(facts);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: remarks of one reading keep their order.
            <li key={index}>
              <span {...(own === undefined && { lang: 'en' })}>{own ?? message}</span>
              {span !== null && (
                <Button
                  variant="subtle"
                  px="xs"
                  aria-label={texts.reading.showInTextOf(own ?? message)}
                  onClick={() => onShow(span)}
                >
                  {texts.reading.inText}
                </Button>
              )}
            </li>
          );
        })}
      </ul>
      <MoreButton list={list} />
    </div>
  );
}
