import { Button } from '@mantine/core';
import { useState } from 'react';
import { Section } from '../../../frame/section.js';
import { useTexts } from '../../../texts/texts.js';
import { ExposedSessions } from './exposed-sessions.js';

/** Every session in the order in which they happened; asked for only when they are wished for, as they may be many. */
export function AllSessions({ studioId, recallId }: { studioId: string; recallId: string }) {
  const words = useTexts().recallExposures;
  const [shown, setShown] = useState(false);
  return (
    <Section title={words.allSessions} hint={words.allSessionsHint}>
      {shown ? (
        <ExposedSessions studioId={studioId} recallId={recallId} label={words.allSessions} />
      ) : (
        <Button variant="default" onClick={() => setShown(true)}>
          {words.showAllSessions}
        </Button>
      )}
    </Section>
  );
}
