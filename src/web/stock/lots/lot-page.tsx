import { Button, Space } from '@mantine/core';
import { useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { LotView } from '../../../stock/lot-list.views.js';
import { Facts } from '../../frame/facts.js';
import { PageLink } from '../../frame/navigation.js';
import { NoSuchPage } from '../../frame/no-such-page.js';
import { Page } from '../../frame/page.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { isProblem } from '../../service/problem.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { nameOf } from '../amounts.js';
import { FindField } from '../find/find-field.js';
import { HoldsSection } from '../holds/holds-section.js';
import { useStudioFacts } from '../use-studio-facts.js';
import { CorrectLotForm } from './correct-lot-form.js';
import { LotContainers } from './lot-containers.js';
import { LotFigures } from './lot-entry.js';
import { LotHistory } from './lot-history.js';
import { LotOrigin } from './lot-origin.js';
import { showLot } from './lots.requests.js';
import { writtenUseBy } from './written-use-by.js';

/** All that is recorded of one lot. */
export function LotPage({ standing, id }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  const { studioId, studioName } = standing;
  const { facts, problem } = useStudioFacts(studioId);
  const lot = useAnswer(['lot', studioId, id], () => showLot(studioId, id));
  if (isProblem(lot.problem, 'not-found')) return <NoSuchPage />;
  const shown = lot.answer;
  return (
    <>
      <FindField studioId={studioId} />
      <Page
        above={studioName}
        title={
          shown ? `${nameOf(shown)}, ${shown.code ?? texts.codeStates[shown.codeState]}` : texts.lot.title
        }
        {...(shown && { lead: `${shown.makerName}, ${writtenUseBy(shown, texts)}` })}
      >
        <ProblemNote problem={lot.problem ?? problem} />
        {(!shown || !facts) && !lot.problem && !problem && <p role="status">{texts.app.loading}</p>}
        {shown && facts && (
          <>
            <LotFacts standing={standing} lot={shown} onChanged={lot.reload} />
            <LotContainers studioId={studioId} lot={shown} facts={facts} />
            <HoldsSection
              standing={standing}
              on={{ lotId: id }}
              holds={shown.holds}
              inherited={inheritedHolds(shown)}
              onChanged={lot.reload}
            />
            <LotHistory standing={standing} lot={shown} facts={facts} onChanged={lot.reload} />
            <LotOrigin studioId={studioId} lot={shown} />
          </>
        )}
      </Page>
    </>
  );
}

/** Holds on what the lot was blended of stand at its containers only. */
function inheritedHolds({ containers }: LotView): number {
  return new Set(
    containers.flatMap(({ holds }) =>
      holds.filter(({ on }) => on === 'parent lot').map(({ holdId }) => holdId),
    ),
  ).size;
}

function LotFacts({
  standing: { studioId, permissions },
  lot,
  onChanged,
}: {
  standing: StandingView;
  lot: LotView;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const [correcting, setCorrecting] = useState(false);
  const standing = lot.codes.filter(({ supersededAt }) => supersededAt === null);
  const earlier = lot.codes.filter(({ supersededAt }) => supersededAt !== null);
  const written = (codes: LotView['codes']) =>
    codes.map(({ kind, code }) => `${code} (${texts.lotCodeKinds[kind]})`).join(', ');
  return (
    <Section title={texts.lot.facts}>
      <LotFigures lot={lot} />
      <Space h="md" />
      <Facts
        facts={[
          [texts.lot.codes, standing.length > 0 ? written(standing) : texts.codeStates[lot.codeState]],
          [texts.lot.earlierCodes, written(earlier)],
          [texts.lot.useByFact, writtenUseBy(lot, texts)],
          [
            texts.lot.manufacturedOn,
            lot.manufacturedOn !== null && writtenDay(lot.manufacturedOn, texts.language),
          ],
          [texts.lot.origin, texts.lotOrigins[lot.origin]],
        ]}
      />
      {permissions.includes('trace') && (
        <PageLink alone to={pathOf({ studioId, area: 'stock' }, 'lots', lot.id, 'trace')}>
          {texts.lot.toTrace}
        </PageLink>
      )}
      {permissions.includes('correct stock') && !correcting && (
        <div>
          <Button mt="sm" variant="default" onClick={() => setCorrecting(true)}>
            {texts.lot.correct}
          </Button>
        </div>
      )}
      {correcting && (
        <CorrectLotForm
          studioId={studioId}
          lot={lot}
          onCorrected={async () => {
            await onChanged();
            setCorrecting(false);
          }}
          onStale={onChanged}
          onCancel={() => setCorrecting(false)}
        />
      )}
    </Section>
  );
}
