import { PageLink } from '../../frame/navigation.js';
import { Note } from '../../frame/note.js';
import { pathOf } from '../../frame/places.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { isAnythingNotSent } from '../alerts.requests.js';
import styles from './not-sent-note.module.css';

/** Somebody was to be told of something and was not: whoever looks at the alerts learns it here. */
export function NotSentNote({ studioId }: { studioId: string }) {
  const words = useTexts().alertPages.notSent;
  const { answer } = useAnswer(['alerts', studioId, 'any not sent'], () => isAnythingNotSent(studioId));
  if (answer !== true) return null;
  return (
    <div className={styles.note}>
      <Note kind="plain">
        <p>
          {words.some}{' '}
          <PageLink to={pathOf({ studioId, area: 'alerts' }, 'not-sent')}>{words.toThem}</PageLink>
        </p>
      </Note>
    </div>
  );
}
