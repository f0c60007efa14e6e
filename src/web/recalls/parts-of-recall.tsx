import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { RecallView } from '../../recalls/recalls.views.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { useTexts } from '../texts/texts.js';
import styles from './parts-of-recall.module.css';
import { outstandingOf, type RecallPart, recallParts } from './recall-parts.js';
import { useReadiness } from './recalls.requests.js';

/** The way through the answer to a recall: its parts in order, and how much each still asks for. */
export function PartsOfRecall({
  standing: { studioId, permissions },
  recall: { id, chainWide, state },
  part,
}: {
  standing: StandingView;
  recall: Pick<RecallView, 'id' | 'chainWide' | 'state'>;
  part: RecallPart | undefined;
}) {
  const texts = useTexts();
  const words = texts.recallParts;
  const { answer: readiness } = useReadiness(studioId, id);
  const outstanding = state === 'open' ? outstandingOf(readiness?.obstacles ?? []) : {};
  const area = { studioId, area: 'recalls' } as const;
  const offered = recallParts.filter(
    (one) => one !== 'studios' || (chainWide && permissions.includes('answer recalls of the chain')),
  );
  return (
    <nav aria-label={words.label}>
      <ol className={styles.parts}>
        {offered.map((one) => {
          const count = outstanding[one] ?? 0;
          return (
            <li key={one}>
              <PageLink
                to={one === 'overview' ? pathOf(area, id) : pathOf(area, id, one)}
                underline="never"
                className={styles.part ?? ''}
                {...(one === part && { 'aria-current': 'page' })}
              >
                {words.names[one]}
                {count > 0 && <span className={styles.count}>{words.outstanding(count)}</span>}
              </PageLink>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}
