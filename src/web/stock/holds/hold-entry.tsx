import { Button, Group } from '@mantine/core';
import { type ReactNode, useRef, useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { LotHoldView } from '../../../stock/lot-list.views.js';
import { Entry } from '../../frame/entries.js';
import { ReasonForm } from '../../frame/reason-form.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { Events } from '../../service/events.js';
import { useTexts } from '../../texts/texts.js';
import { Sign } from '../sign.js';
import { AskReleaseForm } from './ask-release-form.js';
import { releaseHold } from './holds.requests.js';
import { ReleaseRequest } from './release-request.js';

const longestReason = 300;

type Shown = Pick<LotHoldView, 'id' | 'kind' | 'reason' | 'note' | 'occurredAt' | 'releaseRequest'> &
  Partial<Pick<LotHoldView, 'releasedAt' | 'releaseReason'>>;

/** One hold: since when and why, and how it ended or can be ended. What is recalled is asked for first, then released. */
export function HoldEntry({
  standing,
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
  const { studioId, personId, permissions } = standing;
  const [doing, setDoing] = useState<'asking' | 'releasing'>();
  const events = useRef(new Events()).current;
  const { kind, reason, note, occurredAt, releasedAt = null, releaseReason = null, releaseRequest } = hold;
  const isOpen = releasedAt === null;
  const word = `${texts.holdKinds[kind]}: ${wordOf(texts.holdReasons, reason)}`;
  const when = useStudioInstants(studioId);
  const asksFirst = kind === 'recall' && (releaseRequest === null || releaseRequest.personId === personId);
  // One's own request with a photo stands for the second person where there is none; the service knows.
  const mayRelease =
    kind !== 'recall' ||
    (releaseRequest !== null && (releaseRequest.personId !== personId || releaseRequest.photoId !== null));
  const finish = async () => {
    await onReleased();
    setDoing(undefined);
  };
  return (
    <Entry
      name={of ?? word}
      isOver={!isOpen}
      actions={
        isOpen &&
        permissions.includes('release holds') &&
        doing === undefined && (
          <Group gap="sm">
            {mayRelease && (
              <Button
                variant="default"
                aria-label={texts.holds.releaseOf(about)}
                onClick={() => setDoing('releasing')}
              >
                {texts.holds.release}
              </Button>
            )}
            {asksFirst && (
              <Button
                variant="default"
                aria-label={texts.holds.askReleaseOf(about)}
                onClick={() => setDoing('asking')}
              >
                {releaseRequest === null ? texts.holds.askRelease : texts.holds.askAgain}
              </Button>
            )}
          </Group>
        )
      }
      below={
        <>
          {doing === 'asking' && (
            <AskReleaseForm
              standing={standing}
              holdId={hold.id}
              about={about}
              onAsked={finish}
              onCancel={() => setDoing(undefined)}
            />
          )}
          {doing === 'releasing' && (
            <ReasonForm
              title={texts.holds.releaseOf(about)}
              label={texts.holds.releaseReason}
              hint={texts.holds.releaseHint}
              longest={longestReason}
              save={async (why) => {
                await releaseHold(studioId, hold.id, why, events.of({ holdId: hold.id, why }));
                await finish();
              }}
              onCancel={() => setDoing(undefined)}
            />
          )}
        </>
      }
    >
      {of !== undefined && (
        <p>
          <Sign standing="fault">{word}</Sign>
        </p>
      )}
      {note !== null && <p>{note}</p>}
      <p>{texts.holds.since(when(occurredAt))}</p>
      {releaseRequest !== null && (
        <ReleaseRequest standing={standing} request={releaseRequest} isOpen={isOpen} />
      )}
      {!isOpen && <p>{texts.holds.released(when(releasedAt), releaseReason ?? '')}</p>}
    </Entry>
  );
}

function wordOf(words: Record<string, string>, reason: string): string {
  return words[reason] ?? reason;
}
