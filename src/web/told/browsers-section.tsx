import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import { deviceOf } from '../account/device-name.js';
import type { PushObstacle } from '../alerts/push-obstacles.js';
import { subscribeToPush, unsubscribeFromPush } from '../alerts/push-subscription.js';
import { Entries } from '../frame/entries.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { isProblem } from '../service/problem.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useRequester } from '../sign-in/requester.js';
import { useTexts } from '../texts/texts.js';
import { DestinationEntry } from './destination-entry.js';
import { addPush, askPushKey } from './told.requests.js';
import type { DestinationsSeen } from './use-destinations.js';
import { useThisBrowser } from './use-this-browser.js';

/** The browsers that are told while Lotward is closed, and how to add this one. */
export function BrowsersSection({
  studioId,
  destinations: { answer, problem, reload },
}: {
  studioId: string;
  destinations: DestinationsSeen;
}) {
  const texts = useTexts();
  const words = texts.told;
  const { studios } = useRequester();
  const [thisBrowser, lookAgain] = useThisBrowser();
  const [refused, setRefused] = useState<PushObstacle>();
  const ids = useRef(new RequestIds()).current;
  const browsers = answer?.items.filter(({ kind }) => kind === 'push') ?? [];
  const own = thisBrowser?.fingerprint ?? null;
  const isTold = own !== null && browsers.some(({ fingerprint }) => fingerprint === own);
  const telling = useAction(async () => {
    setRefused(undefined);
    const { publicKey } = await askPushKey(studioId);
    const made = await subscribeToPush(publicKey);
    if (typeof made === 'string') {
      setRefused(made);
      return;
    }
    const device = deviceOf(navigator.userAgent);
    const name = device ? words.device(device.browser, device.system) : words.unknownDevice;
    try {
      await addPush(studioId, { id: ids.for(made), name, ...made });
    } catch (error) {
      // Told already, as when an answer was lost: that is what was wanted.
      if (!isProblem(error, 'already-exists')) throw error;
    }
    ids.renew();
    await Promise.all([lookAgain(), reload()]);
  });
  // The address of a browser serves all studios of its person, so it is given up with the last of them only.
  const giveUp = async () => {
    if (studios.length === 1) await unsubscribeFromPush();
    await lookAgain();
  };
  const obstacle = refused ?? thisBrowser?.obstacle;
  return (
    <Section title={words.browsers} hint={words.browsersHint}>
      <ProblemNote problem={problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {answer && browsers.length === 0 && <p>{words.noBrowser}</p>}
      {browsers.length > 0 && (
        <Entries label={words.browsers}>
          {browsers.map((browser) => {
            const isThis = own !== null && browser.fingerprint === own;
            return (
              <DestinationEntry
                key={browser.id}
                studioId={studioId}
                destination={browser}
                mark={isThis ? words.thisBrowser : undefined}
                onChanged={reload}
                {...(isThis && { onRemoved: giveUp })}
              />
            );
          })}
        </Entries>
      )}
      {!isTold && obstacle !== undefined && (
        <Note kind="plain">
          <p>{texts.pushObstacles[obstacle]}</p>
        </Note>
      )}
      <ProblemNote problem={telling.problem} />
      {answer && thisBrowser && !isTold && (thisBrowser.obstacle === undefined || refused !== undefined) && (
        <>
          <p>{words.tellThisHint}</p>
          <Button loading={telling.busy} onClick={() => void telling.run()}>
            {words.tellThis}
          </Button>
        </>
      )}
    </Section>
  );
}
