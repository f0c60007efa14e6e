import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { RecallView } from '../../../recalls/recalls.views.js';
import { Facts } from '../../frame/facts.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { Section } from '../../frame/section.js';
import { useTexts } from '../../texts/texts.js';

/** What is held because of it, now and when it arrives. */
export function HoldsPart({
  standing: { studioId, permissions },
  recall,
}: {
  standing: StandingView;
  recall: RecallView;
}) {
  const texts = useTexts();
  const words = texts.recallOverview;
  return (
    <Section title={words.holds} hint={words.holdsHint}>
      <Facts
        facts={[
          [words.heldLots, String(recall.heldLots)],
          [words.standingHold, recall.standingHold ? words.standsGuard : words.noGuard],
          [words.caught, recall.caughtLots > 0 && words.caughtLots(recall.caughtLots)],
          [words.trays, recall.traysReached === 0 ? words.noTrays : words.traysReached(recall.traysReached)],
        ]}
      />
      {permissions.includes('read stock') && (
        <PageLink alone to={pathOf({ studioId, area: 'stock' }, 'holds')}>
          {words.toHolds}
        </PageLink>
      )}
    </Section>
  );
}
