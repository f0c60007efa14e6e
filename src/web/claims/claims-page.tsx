import { useCallback } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { ClaimView } from '../../reorder/claims/claims.views.js';
import { Page } from '../frame/page.js';
import { PagedEntries } from '../frame/paged-entries.js';
import { Section } from '../frame/section.js';
import { useStudio } from '../service/studio-answers.js';
import { usePages } from '../service/use-pages.js';
import { useTexts } from '../texts/texts.js';
import { ClaimByHand } from './claim-by-hand.js';
import { ClaimEntry } from './claim-entry.js';
import { listClaims } from './claims.requests.js';
import { SuggestedPart } from './suggested-part.js';

/** What suppliers are asked to make good, and what they could be asked. */
export function ClaimsPage({ standing }: { standing: StandingView }) {
  const words = useTexts().supplierClaims;
  const { studioId, studioName, permissions } = standing;
  const mayPlace = permissions.includes('place orders');
  const currency = useStudio(studioId).answer?.currency ?? 'EUR';
  const underWay = useClaims(studioId, 'standing');
  const settled = useClaims(studioId, 'settled');
  const dropped = useClaims(studioId, 'dropped');
  const onChanged = useCallback(async () => {
    await Promise.all([underWay.reload(), settled.reload(), dropped.reload()]);
  }, [underWay.reload, settled.reload, dropped.reload]);
  const entry = (claim: ClaimView) => (
    <ClaimEntry
      key={claim.id}
      studioId={studioId}
      claim={claim}
      currency={claim.currency ?? currency}
      ours={currency}
      mayPlace={mayPlace}
      onChanged={onChanged}
    />
  );
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.underWay} hint={words.underWayHint}>
        <PagedEntries label={words.underWay} list={underWay} none={words.noneUnderWay} entry={entry} />
      </Section>
      <Section title={words.suggested} hint={words.suggestedHint}>
        <SuggestedPart studioId={studioId} currency={currency} mayOpen={mayPlace} onOpened={onChanged} />
      </Section>
      {mayPlace && (
        <Section title={words.byHand} hint={words.byHandHint}>
          <ClaimByHand studioId={studioId} currency={currency} onOpened={onChanged} />
        </Section>
      )}
      <Section title={words.settled}>
        <PagedEntries label={words.settled} list={settled} none={words.noneSettled} entry={entry} />
      </Section>
      {dropped.items !== undefined && dropped.items.length > 0 && (
        <Section title={words.dropped}>
          <PagedEntries label={words.dropped} list={dropped} none={null} entry={entry} />
        </Section>
      )}
    </Page>
  );
}

const useClaims = (studioId: string, state: 'standing' | 'settled' | 'dropped') =>
  usePages(['supplier claims', studioId, state], (after) => listClaims(studioId, state, after));
