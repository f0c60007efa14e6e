import { Title } from '@mantine/core';
import type { PreparedMessageView } from '../../../../recalls/contacts/contacts.views.js';
import { photoAddress } from '../../../service/photos.js';
import { useTexts } from '../../../texts/texts.js';
import styles from './message-sheet.module.css';
import { useStudioToday } from './use-studio-today.js';

/** A message as it is handed over: alone on the page when it is printed. */
export function MessageSheet({
  studioId,
  studioName,
  message,
  name,
}: {
  studioId: string;
  studioName: string;
  message: PreparedMessageView;
  /** What the recipient is called on the page, where the message names nobody. */
  name: string;
}) {
  const words = useTexts().recallTelling;
  const today = useStudioToday(studioId, message.language);
  const { heading, body, recipient, drill, photoIds } = message;
  return (
    <article
      data-sheet
      className={styles.sheet}
      lang={message.language}
      aria-label={words.messageFor(recipient ?? name)}
    >
      {drill && <p className={styles.drill}>{words.drillSheet}</p>}
      <div className={styles.head}>
        <p>{[studioName, today].filter((part) => part !== '').join(', ')}</p>
        {recipient !== null && <p>{recipient}</p>}
      </div>
      <Title order={2} className={styles.heading ?? ''}>
        {heading}
      </Title>
      {body.map(({ text }, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two uses may be told in the same words, and keep their order.
        <p key={place}>{text}</p>
      ))}
      {photoIds.length > 0 && (
        <div className={styles.pictures}>
          {photoIds.map((photoId) => (
            <img
              key={photoId}
              className={styles.picture}
              src={photoAddress(studioId, photoId)}
              alt={words.picture}
            />
          ))}
        </div>
      )}
    </article>
  );
}
