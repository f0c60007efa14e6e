import { Button } from '@mantine/core';
import { useRef } from 'react';
import { Entry } from '../frame/entries.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { outgoing } from '../offline/outgoing.js';
import type { Whose } from '../offline/use-waiting.js';
import { Events } from '../service/events.js';
import { useAction } from '../service/use-action.js';
import { refusedSinceText } from '../texts/reason-text.js';
import { useTexts } from '../texts/texts.js';
import type { LaidThing } from './laid-things.js';

/** One thing that lies on the tray, with its running total; what may not be used any more says so here. */
export function TrayThingEntry({
  whose,
  thing,
  works,
}: {
  whose: Whose;
  thing: LaidThing;
  /** Whether the tray is still laid, by somebody who may. */
  works: boolean;
}) {
  const texts = useTexts();
  const events = useRef(new Events()).current;
  const { run, busy, problem } = useAction(async () => {
    const lineId = thing.lineIds.at(-1);
    if (lineId === undefined) return;
    await outgoing.sendOrKeep({ ...events.of({ off: lineId }), ...whose, kind: 'take off', lineId });
    events.renew();
  });
  const facts = [
    texts.tray.lot(thing.lotCode ?? thing.labelCode),
    thing.stockForm === 'pieces' && texts.tray.pieces(thing.pieces),
    texts.knownBy[thing.knownBy],
  ].filter((fact) => fact !== false);
  return (
    <Entry
      name={thing.label}
      actions={
        works && (
          <Button
            size="xl"
            variant="default"
            loading={busy}
            aria-label={texts.tray.takeOffOf(thing.label, thing.pieces)}
            onClick={() => void run()}
          >
            {thing.pieces > 1 ? texts.tray.takeOneOff : texts.tray.takeOff}
          </Button>
        )
      }
      below={
        <>
          <ProblemNote problem={problem} />
          {thing.refusedNow.length > 0 && (
            <Note kind="fault">
              {thing.refusedNow.map((reason) => (
                <p key={reason.code}>{refusedSinceText(texts, reason)}</p>
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
