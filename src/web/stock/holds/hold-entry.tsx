import { Button } from '@mantine/core';
import { type ReactNode, useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { LotHoldView } from '../../../stock/lot-list.views.js';
import { Entry } from '../../frame/entries.js';
import { useTexts } from '../../texts/texts.js';
import { writtenInstant } from '../../texts/written-dates.js';
import { Sign } from '../sign.js';
import { ReleaseHoldForm } from './release-hold-form.js';

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
  const { kind, reason, note, occurredAt, releasedAt = null, releaseReason = null } = hold;
  const isOpen = releasedAt === null;
  const word = `${texts.holdKinds[kind]}: ${wordOf(texts.holdReasons, reason)}`;
  const when = (instant: string) => writtenInstant(instant, texts.language);
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
          <ReleaseHoldForm
            studioId={studioId}
            holdId={hold.id}
            about={about}
            onReleased={async () => {
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
