import { Button } from '@mantine/core';
import { useRef } from 'react';
import type { TrayLineView } from '../../sessions/tray.views.js';
import { Entry } from '../frame/entries.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Events } from '../service/events.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { takeOff } from './tray.requests.js';

/** One thing that lies on the tray; what may not be used any more says so here. */
export function TrayLine({
  studioId,
  sessionId,
  line,
  works,
  onTakenOff,
}: {
  studioId: string;
  sessionId: string;
  line: TrayLineView;
  /** Whether the tray is still laid, by somebody who may. */
  works: boolean;
  onTakenOff: () => Promise<void>;
}) {
  const texts = useTexts();
  const events = useRef(new Events()).current;
  const { run, busy, problem } = useAction(async () => {
    await takeOff(studioId, sessionId, line.id, events.of({ off: line.id }));
    events.renew();
    await onTakenOff();
  });
  const facts = [
    texts.tray.lot(line.lotCode ?? line.labelCode),
    line.stockForm === 'pieces' && texts.tray.pieces(line.pieces),
    texts.knownBy[line.knownBy],
  ].filter((fact) => fact !== false);
  return (
    <Entry
      name={line.label}
      actions={
        works && (
          <Button
            variant="default"
            loading={busy}
            aria-label={texts.tray.takeOffOf(line.label)}
            onClick={() => void run()}
          >
            {texts.tray.takeOff}
          </Button>
        )
      }
      below={
        <>
          <ProblemNote problem={problem} />
          {line.refusedNow.length > 0 && (
            <Note kind="fault">
              {line.refusedNow.map(({ code, message }) => (
                <p key={code}>{message}</p>
              ))}
            </Note>
          )}
        </>
      }
    >
      <p>{facts.join(', ')}</p>
    </Entry>
  );
}
