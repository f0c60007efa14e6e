import type { MessageRemarkView, PreparedMessageView } from '../../../../recalls/contacts/contacts.views.js';
import { Note } from '../../../frame/note.js';
import { useTexts } from '../../../texts/texts.js';
import styles from './telling.module.css';

/** What the studio should see to before it passes a message on. */
export function MessageRemarks({ remarks }: { remarks: readonly MessageRemarkView[] }) {
  const texts = useTexts();
  const words = texts.recallTelling;
  if (remarks.length === 0) return null;
  return (
    <Note kind="plain">
      <p className={styles.noteTitle}>{words.seeTo}</p>
      <ul className={styles.remarks}>
        {remarks.map(({ code, text, words: named }) => {
          const own = texts.messageRemarks[code];
          return (
            <li key={code}>
              <span {...(own === undefined && { lang: 'en' })}>{own ?? text}</span>
              {named.length > 0 && <> {words.about(named.join(', '))}</>}
            </li>
          );
        })}
      </ul>
    </Note>
  );
}

/** What the law asks a message to say, and that it is said. */
export function MessageElements({
  message: { elements, headingElements, body },
}: {
  message: PreparedMessageView;
}) {
  const words = useTexts().recallTelling;
  const answered = new Set([...headingElements, ...body.flatMap((paragraph) => paragraph.elements)]);
  return (
    <details className={styles.details}>
      <summary className={styles.summary}>{words.asks}</summary>
      <ul lang="en">
        {elements.map(({ code, asks, source, howSure }) => (
          <li key={code}>
            {answered.has(code)
              ? words.answered(asks, source, words.howSure[howSure])
              : words.notAnswered(asks)}
          </li>
        ))}
      </ul>
    </details>
  );
}
