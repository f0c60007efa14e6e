import { Button } from '@mantine/core';
import { Note } from '../../frame/note.js';
import { useOutgoing } from '../../offline/outgoing.js';
import { useTexts } from '../../texts/texts.js';

/** What has to arrive before a session is finished: one's own, and what others left on this device. */
export function WaitingNotes({
  whose: { sessionId, personId },
  waiting,
  onSendAgain,
}: {
  whose: { sessionId: string; personId: string };
  waiting: number;
  onSendAgain: () => void;
}) {
  const texts = useTexts();
  const ofOthers = useOutgoing().waiting.filter(
    (write) => write.sessionId === sessionId && write.personId !== personId,
  ).length;
  return (
    <>
      {waiting > 0 && (
        <Note kind="fault">
          <p>{texts.completion.waiting(waiting)}</p>
          <Button size="xl" variant="default" mt="sm" onClick={onSendAgain}>
            {texts.tray.sendAgain}
          </Button>
        </Note>
      )}
      {ofOthers > 0 && (
        <Note kind="fault">
          <p>{texts.completion.ofOthers(ofOthers)}</p>
        </Note>
      )}
    </>
  );
}
