import type { AlertView } from '../../../alerts/alerts.views.js';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { useTexts } from '../../texts/texts.js';
import { AlertEntry } from '../alert-entry.js';
import { nextStep } from '../next-step.js';
import { useNameOf } from '../use-name-of.js';
import { writtenMorning } from '../written-morning.js';
import styles from './listed-alert.module.css';

/** An alert of the list: what is wrong, how it stands, and what to do next. */
export function ListedAlert({ standing, alert }: { standing: StandingView; alert: AlertView }) {
  const texts = useTexts();
  const words = texts.alertPages;
  const { studioId, personId } = standing;
  const when = useStudioInstants(studioId);
  const nameOf = useNameOf(studioId);
  const { givenTo, putOffUntil, openedAt, closedAt } = alert;
  const state = [
    words.openedAt(when(openedAt)),
    closedAt !== null && words.closedAt(when(closedAt)),
    givenTo !== null &&
      words.givenTo(givenTo === personId ? words.toMe : (nameOf(givenTo) ?? texts.alerts.somebody)),
    closedAt === null && putOffUntil !== null && words.putOffUntil(writtenMorning(putOffUntil, texts, when)),
  ].filter((part) => part !== false);
  return (
    <AlertEntry standing={standing} alert={alert}>
      <p>{state.join(', ')}</p>
      {closedAt === null && <p className={styles.next}>{nextStep(alert.kind, texts)}</p>}
    </AlertEntry>
  );
}
