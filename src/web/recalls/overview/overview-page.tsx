import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Note } from '../../frame/note.js';
import { useTexts } from '../../texts/texts.js';
import { DrillPart } from '../drills/drill-part.js';
import { RecallFrame } from '../recall-frame.js';
import { isSaidHere } from '../said-here.js';
import { HoldsPart } from './holds-part.js';
import { LotsPart } from './lots-part.js';
import { NoticePart } from './notice-part.js';
import { NumbersPart } from './numbers-part.js';
import { ScopePart } from './scope-part.js';
import { WithdrawPart } from './withdraw-part.js';

/** What a recall is about, which lots it meets, and how far the answer has come. */
export function OverviewPage({ standing, id }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  return (
    <RecallFrame standing={standing} recallId={id} part="overview">
      {(recall) => (
        <>
          {recall.withdrawalReason !== null && (
            <Note kind="plain">
              <p>{texts.recalls.withdrawn(recall.withdrawalReason)}</p>
            </Note>
          )}
          {recall.kind === 'drill' && <DrillPart standing={standing} recall={recall} />}
          <NumbersPart standing={standing} recall={recall} />
          <LotsPart standing={standing} recall={recall} />
          {recall.kind === 'recall' && <HoldsPart standing={standing} recall={recall} />}
          <ScopePart standing={standing} recall={recall} />
          <NoticePart standing={standing} recall={recall} />
          {recall.state === 'open' &&
            isSaidHere(recall, standing.studioId) &&
            standing.permissions.includes('answer recalls') && (
              <WithdrawPart standing={standing} recall={recall} />
            )}
        </>
      )}
    </RecallFrame>
  );
}
