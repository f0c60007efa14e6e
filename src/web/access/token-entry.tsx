import { useRef } from 'react';
import type { ApiTokenView } from '../../identity/sign-in/api-tokens.views.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Entry } from '../frame/entries.js';
import { RequestIds } from '../service/request-ids.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstantHere } from '../texts/written-dates.js';
import { revokeToken } from './access.requests.js';
import styles from './token-entry.module.css';

/** One token: as whom it acts, what it may do, until when, and whether it is used. */
export function TokenEntry({
  studioId,
  token,
  actsAs,
  onRevoked,
}: {
  studioId: string;
  token: ApiTokenView;
  /** Left out: as whoever reads this. */
  actsAs: string | undefined;
  onRevoked: () => Promise<void>;
}) {
  const texts = useTexts();
  const ids = useRef(new RequestIds()).current;
  const { id, name, scopes, expiresAt, revokedAt, lastUsedAt } = token;
  const when = (instant: string) => writtenInstantHere(instant, texts.language);
  const isOver = revokedAt !== null || Date.parse(expiresAt) <= Date.now();
  const end =
    revokedAt !== null
      ? texts.programs.revoked(when(revokedAt))
      : isOver
        ? texts.programs.expired(when(expiresAt))
        : texts.programs.until(when(expiresAt));
  const used = lastUsedAt === null ? texts.programs.neverUsed : texts.programs.used(when(lastUsedAt));
  const revoke = async () => {
    await revokeToken(studioId, id, ids.for({ tokenId: id }));
    await onRevoked();
  };
  return (
    <Entry
      name={name}
      isOver={isOver}
      actions={
        !isOver && (
          <ConfirmButton
            label={texts.programs.revokeOf(name)}
            question={texts.programs.revokeQuestion(name)}
            action={revoke}
          >
            {texts.programs.revoke}
          </ConfirmButton>
        )
      }
    >
      <p>
        {[actsAs === undefined ? texts.programs.ofYou : texts.programs.ofOther(actsAs), end, used].join(', ')}
      </p>
      <details>
        <summary className={styles.summary}>{texts.programs.scopes(scopes.length)}</summary>
        {scopes.map((scope) => texts.permissions[scope] ?? scope).join(', ')}
      </details>
    </Entry>
  );
}
