import type { StandingView } from '../../../../identity/sign-in/sign-in.views.js';
import { RecallFrame } from '../../recall-frame.js';
import { AllSessions } from './all-sessions.js';
import { ExposedClients } from './exposed-clients.js';
import { ExposureTotals } from './exposure-totals.js';
import { PlannedSessions } from './planned-sessions.js';

/** Whom the lots of a recall touched, or may have, and whom they would have touched next. */
export function ExposuresPage({ standing, id }: { standing: StandingView; id: string }) {
  const { studioId } = standing;
  return (
    <RecallFrame standing={standing} recallId={id} part="exposures">
      {(recall) => (
        <>
          <ExposureTotals studioId={studioId} recallId={recall.id} />
          <ExposedClients studioId={studioId} recallId={recall.id} />
          <AllSessions studioId={studioId} recallId={recall.id} />
          <PlannedSessions studioId={studioId} recallId={recall.id} />
        </>
      )}
    </RecallFrame>
  );
}
