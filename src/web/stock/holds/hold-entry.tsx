import { Button } from '@mantine/core';
import { type ReactNode, useRef, useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { LotHoldView } from '../../../stock/lot-list.views.js';
import { Entry } from '../../frame/entries.js';
import { ReasonForm } from '../../frame/reason-form.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { Events } from '../../service/events.js';
import { useTexts } from '../../texts/texts.js';
import { Sign } from '../sign.js';
import { releaseHold } from './holds.requests.js';

const longestReason = 300;

type Shown = Pick<LotHoldView, 'id' | 'kind' | 'reason' | 'note' | 'occurredAt'> &
  Partial<Pick<LotHoldView, 'releasedAt' | 'releaseReason'>>;

/** One hold: since when and why, and how it ended or can be ended. */
export function HoldEntry({
  standing: { studioId, permissions },
  hold,
  of,
  about,
  onReleased,
}: {
  standing: StandingView;
  hold: Shown;
  /** What is held, where the page does not say it. */
  of?: ReactNode;
  /** What is held in words, so that the button says of what. */
  about: string;
  onReleased: () => Promise<void>;
}) {
  const texts = useTexts();
  const [releasing, setReleasing] = useState(false);
  const events = useRef(new Events()).current;
  const { kind, reason, note, occurredAt, releasedAt = null, releaseReason = null } = hold;
  const isOpen = releasedAt === null;
  const word = `${texts.holdKinds[kind]}: ${wordOf(texts.holdReasons, reason)}`;
  const when = useStudioInstants(studioId);
  return (
    <Entry
      name={of ?? word}
      isOver={!isOpen}
      actions={
        isOpen &&
        permissions.includes('release holds') &&
        !releasing && (
          <Button
            variant="default"
            aria-label={texts.holds.releaseOf(about)}
            onClick={() => setReleasing(true)}
          >
            {texts.holds.release}
          </Button>
        )
      }
      below={
        releasing && (
          <ReasonForm
            title={texts.holds.releaseOf(about)}
            label={texts.holds.releaseReason}
            hint={texts.holds.releaseHint}
            longest={longestReason}
            save={async (why) => {
              await releaseHold(studioId, hold.id, why, events.of({ holdId: hold.id, why }));
              await onReleased();
              setReleasing(false);
            }}
            onCancel={() => setReleasing(false)}
          />
        )
      }
    >
      {of !== undefined && (
        <p>
          <Sign standing="fault">{word}</Sign>
        </p>
      )}
      {note !== null && <p>{note}</p>}
      <p>{texts.holds.since(when(occurredAt))}</p>
      {!isOpen && <p>{texts.holds.released(when(releasedAt), releaseReason ?? '')}</p>}
    </Entry>
  );
}

function wordOf(words: Record<string, string>, reason: string): string {
  return words[reason] ?? reason;
}
