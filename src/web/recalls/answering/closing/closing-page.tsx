import { useState } from 'react';
import type { StandingView } from '../../../../identity/sign-in/sign-in.views.js';
import type { ClosingView } from '../../../../recalls/closing/closing.views.js';
import type { RecallView } from '../../../../recalls/recalls.views.js';
import { Note } from '../../../frame/note.js';
import { useTexts } from '../../../texts/texts.js';
import { RecallFrame } from '../../recall-frame.js';
import { ClosedSection } from './closed-section.js';
import { ClosingForm } from './closing-form.js';
import { ObstaclesSection } from './obstacles-section.js';
import { ReportSection } from './report-section.js';

/** The end of a recall: what still stands against it, who signs for it, and the report. */
export function ClosingPage({ standing, id }: { standing: StandingView; id: string }) {
  return (
    <RecallFrame standing={standing} recallId={id} part="closing">
      {(recall) => <Closing standing={standing} recall={recall} />}
    </RecallFrame>
  );
}

function Closing({ standing, recall }: { standing: StandingView; recall: RecallView }) {
  const words = useTexts().recallClosing;
  const { studioId, permissions } = standing;
  const [closed, setClosed] = useState<ClosingView>();
  return (
    <>
      {closed && (
        <Note kind="good">
          <p>{words.done[recall.kind]}</p>
          {recall.kind === 'recall' && (
            <p>{words.staying(closed.holdsStaying, closed.standingHoldsStaying)}</p>
          )}
        </Note>
      )}
      {recall.state !== 'open' ? (
        <ClosedSection studioId={studioId} recall={recall} />
      ) : permissions.includes('answer recalls') ? (
        <ClosingForm standing={standing} recall={recall} onClosed={setClosed} />
      ) : (
        <ObstaclesSection studioId={studioId} recall={recall} />
      )}
      <ReportSection studioId={studioId} recall={recall} />
    </>
  );
}
