import type { MatchReasonView } from '../../../recalls/recalls.views.js';
import { useTexts } from '../../texts/texts.js';
import { matchReasonText } from './match-reason-text.js';
import styles from './matches.module.css';

/** Why a lot is met by a scope. */
export function LotReasons({ reasons }: { reasons: readonly MatchReasonView[] }) {
  const texts = useTexts();
  return (
    <ul className={styles.reasons} {...(!texts.language.startsWith('de') && { lang: 'en' })}>
      {reasons.map((reason) => (
        <li key={`${reason.code} ${reason.message}`}>{matchReasonText(texts, reason)}</li>
      ))}
    </ul>
  );
}
