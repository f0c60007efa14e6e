import { Button, Modal } from '@mantine/core';
import { useState } from 'react';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useAnswer } from '../service/use-answer.js';
import { useSignedIn } from '../sign-in/requester.js';
import { PersonSwitch } from '../tablet/person-switch.js';
import { askWhichTablet } from '../tablet/tablet.requests.js';
import { useTexts } from '../texts/texts.js';

/**
 * Lets the next artist take over a shared tablet by badge or PIN; the same tray is open for them. What still waits to be
 * sent stays with whoever scanned it.
 */
export function TakeOver({ waiting }: { waiting: number }) {
  const texts = useTexts();
  const { requester, refresh } = useSignedIn();
  const [opened, setOpened] = useState(false);
  // Whoever has a sign-in name here sits at a device of their own.
  if (requester.signInName !== null) return null;
  return (
    <div>
      <Button size="xl" variant="default" mt="xl" onClick={() => setOpened(true)}>
        {texts.takeOver.open}
      </Button>
      <Modal
        opened={opened}
        onClose={() => setOpened(false)}
        title={texts.takeOver.title}
        size="lg"
        centered
        closeButtonProps={{ 'aria-label': texts.app.close, size: 'xl' }}
      >
        <p>{texts.takeOver.lead}</p>
        {waiting > 0 && (
          <Note kind="plain">
            <p>{texts.takeOver.waiting(waiting)}</p>
          </Note>
        )}
        <Choice
          onSignedIn={async () => {
            setOpened(false);
            await refresh();
          }}
        />
      </Modal>
    </div>
  );
}

function Choice({ onSignedIn }: { onSignedIn: () => Promise<void> }) {
  const texts = useTexts();
  const { answer: tablet, problem } = useAnswer(['tablet'], askWhichTablet);
  if (problem) return <ProblemNote problem={problem} />;
  if (tablet === undefined) return <p role="status">{texts.app.loading}</p>;
  if (tablet === null) return <p>{texts.takeOver.noTablet}</p>;
  return <PersonSwitch tablet={tablet} onSignedIn={onSignedIn} />;
}
