import { useState } from 'react';
import type { StandingView } from '../../../../identity/sign-in/sign-in.views.js';
import type { RecallView } from '../../../../recalls/recalls.views.js';
import type { ContactAudience } from '../../../../recalls/vocabulary.js';
import { RecallFrame } from '../../recall-frame.js';
import { AttemptsSection } from './attempts-section.js';
import { EffectivenessSection } from './effectiveness-section.js';
import { MessagePart } from './message-part.js';
import { RecipientsSection } from './recipients-section.js';
import type { ToTell } from './to-tell.js';

/** Telling everybody whom a recall concerns: with what words, and what came of each attempt. */
export function TellingPage({ standing, id }: { standing: StandingView; id: string }) {
  return (
    <RecallFrame standing={standing} recallId={id} part="telling">
      {(recall) => <Telling standing={standing} recall={recall} />}
    </RecallFrame>
  );
}

function Telling({ standing, recall }: { standing: StandingView; recall: RecallView }) {
  const [audience, setAudience] = useState<ContactAudience>('client');
  const [reading, setReading] = useState<ToTell>();
  const { studioId } = standing;
  if (reading) {
    return (
      <MessagePart
        standing={standing}
        recall={recall}
        toTell={reading}
        onBack={() => setReading(undefined)}
      />
    );
  }
  return (
    <>
      <EffectivenessSection standing={standing} recall={recall} />
      <RecipientsSection
        standing={standing}
        recall={recall}
        audience={audience}
        onAudience={setAudience}
        onRead={setReading}
      />
      <AttemptsSection key={audience} studioId={studioId} recallId={recall.id} audience={audience} />
    </>
  );
}
