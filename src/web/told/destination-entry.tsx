import { Button } from '@mantine/core';
import { type ReactNode, useRef, useState } from 'react';
import type { AlertDestinationView } from '../../alerts/destinations/alert-destinations.views.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Entry } from '../frame/entries.js';
import { ProblemNote } from '../frame/problem-note.js';
import { ServiceWords } from '../frame/service-words.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { nameOfDestination } from './destination-name.js';
import { changeDestination, removeDestination, testDestination } from './told.requests.js';
import { WatchedTest } from './watched-test.js';

/** One place where alerts go: to be tested, paused, taken up again and removed. */
export function DestinationEntry({
  studioId,
  destination,
  mark,
  waitsBecause,
  actions,
  below,
  onChanged,
  onRemoved,
  children,
}: {
  studioId: string;
  destination: AlertDestinationView;
  /** A word that sets it apart, beside how it stands. */
  mark?: string | undefined;
  /** Why nothing can be sent there just now. */
  waitsBecause?: string | undefined;
  /** What else can be done with it. */
  actions?: ReactNode;
  below?: ReactNode;
  onChanged: () => Promise<void>;
  /** What is to be done beside, before the list is read anew. */
  onRemoved?: () => Promise<void>;
  children?: ReactNode;
}) {
  const texts = useTexts();
  const words = texts.destination;
  const { id, state, stateReason, version, createdAt } = destination;
  const name = nameOfDestination(destination, texts);
  const when = useStudioInstants(studioId);
  const ids = useRef(new RequestIds()).current;
  const [testId, setTestId] = useState<string>();
  const changing = useAction(async () => {
    const change = { version, state: state === 'active' ? 'paused' : 'active' } as const;
    await readAnewIfStale(
      () => changeDestination(studioId, id, { id: ids.for({ id, ...change }), ...change }),
      onChanged,
    );
    setTestId(undefined);
    await onChanged();
  });
  const testing = useAction(async () => {
    setTestId(undefined);
    const { deliveryId } = await testDestination(studioId, id, ids.for({ test: id }));
    ids.renew();
    setTestId(deliveryId);
  });
  const remove = async () => {
    await removeDestination(studioId, id, ids.for({ remove: id }));
    await onRemoved?.();
    await onChanged();
  };
  return (
    <Entry
      name={name}
      mark={
        [mark, state === 'active' ? undefined : words.states[state]].filter(Boolean).join(', ') || undefined
      }
      actions={
        <>
          {state === 'active' && (
            <Button
              variant="default"
              loading={testing.busy}
              aria-label={words.testOf(name)}
              onClick={() => void testing.run()}
            >
              {words.test}
            </Button>
          )}
          {actions}
          <Button
            variant="default"
            loading={changing.busy}
            aria-label={state === 'active' ? words.pauseOf(name) : words.resumeOf(name)}
            onClick={() => void changing.run()}
          >
            {state === 'active' ? words.pause : words.resume}
          </Button>
          <ConfirmButton label={words.removeOf(name)} question={words.removeQuestion(name)} action={remove}>
            {words.remove}
          </ConfirmButton>
        </>
      }
      below={
        <>
          <ProblemNote problem={testing.problem ?? changing.problem} />
          {testId !== undefined && (
            <WatchedTest
              key={testId}
              studioId={studioId}
              destinationId={id}
              deliveryId={testId}
              waitsBecause={waitsBecause}
            />
          )}
          {below}
        </>
      }
    >
      {children}
      <p>{words.addedAt(when(createdAt))}</p>
      {state === 'paused' && <p>{words.pausedHint}</p>}
      {state === 'stopped' && stateReason !== null && (
        <p>
          {words.stoppedBecause} <ServiceWords>{stateReason}</ServiceWords>
        </p>
      )}
    </Entry>
  );
}
