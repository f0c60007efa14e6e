import { Button, Group } from '@mantine/core';
import { useEffect, useRef, useSyncExternalStore } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { wordsOfProduct } from '../catalogue/product-words.js';
import { Entries } from '../frame/entries.js';
import { Note } from '../frame/note.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { usePlaces, useStudio } from '../service/studio-answers.js';
import { useRequester } from '../sign-in/requester.js';
import { useTexts } from '../texts/texts.js';
import { keptDelivery } from './delivery-draft.js';
import { DeliveryFields } from './delivery-fields.js';
import { LineEntry, type LineSurroundings } from './line-entry.js';
import { OutstandingPart } from './outstanding-part.js';
import { ReceiptPart } from './receipt-part.js';
import { ScanPart } from './scan-part.js';
import { TakeInPart } from './take-in-part.js';
import { useAskedExpected } from './use-asked-expected.js';
import { useReadings } from './use-readings.js';
import { useTakingIn } from './use-taking-in.js';

/** Takes in what arrived: scanned or typed, looked over, taken in at once, and labelled. */
export function ReceivePage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.receiving;
  const { studioId, studioName, personId, permissions } = standing;
  const delivery = keptDelivery(useRequester().accountId ?? personId, studioId);
  const draft = useSyncExternalStore(delivery.listen, delivery.read);
  const studio = useStudio(studioId);
  const placesHere = usePlaces(studioId);
  const places = placesHere.answer?.filter(({ archived }) => !archived) ?? [];
  const usualPlaceId = places.some(({ id }) => id === draft.placeId) ? draft.placeId : (places[0]?.id ?? '');
  const currency = studio.answer?.currency ?? 'EUR';
  const timeZone = studio.answer?.timeZone ?? 'UTC';
  const mayChangeRegister = permissions.includes('change the register');
  const field = useRef<HTMLInputElement>(null);
  const readings = useReadings(studioId, delivery);
  const taking = useTakingIn(studioId, delivery, { usualPlaceId, currency, timeZone });
  const isTakenIn = draft.receipt !== undefined;
  useAskedExpected(studioId, delivery, !isTakenIn);

  const isUnfinished = !isTakenIn && draft.lines.length > 0;
  useEffect(() => {
    if (!isUnfinished) return;
    // Another page of the app keeps it; closing or loading the window anew does not.
    const ask = (event: BeforeUnloadEvent) => event.preventDefault();
    window.addEventListener('beforeunload', ask);
    return () => window.removeEventListener('beforeunload', ask);
  }, [isUnfinished]);

  const around: LineSurroundings = {
    studioId,
    delivery,
    usualPlaceId,
    places,
    currency,
    mayChangeRegister,
    reviewed: taking.reviewed,
    askedAbove: readings.last?.kind === 'asked' ? readings.last.key : undefined,
    onAnswered: () => field.current?.focus({ preventScroll: true }),
  };
  if (draft.receipt) {
    const names = new Map(
      draft.lines.flatMap(({ product }) => (product ? [[product.id, wordsOfProduct(product)] as const] : [])),
    );
    return (
      <Page key="taken in" above={studioName} title={words.title}>
        <ReceiptPart
          studioId={studioId}
          receipt={draft.receipt}
          names={names}
          places={places}
          mayPrint={permissions.includes('print labels')}
          onNext={() => delivery.startAnew()}
        />
      </Page>
    );
  }
  const [lastOut] = draft.takenOut;
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <ProblemNote problem={studio.problem ?? placesHere.problem} />
      <Section title={words.scanTitle} hint={words.scanTitleHint}>
        <ScanPart field={field} draft={draft} readings={readings} around={around} />
      </Section>
      {draft.origin === 'purchase' && draft.expectedDeliveryId !== '' && (
        <OutstandingPart studioId={studioId} expectedDeliveryId={draft.expectedDeliveryId} />
      )}
      <Section title={words.lines} hint={words.linesHint}>
        {lastOut && (
          <Note kind="plain">
            <Group gap="sm">
              <span>
                {words.wasTakenOut(lastOut.product ? wordsOfProduct(lastOut.product) : words.unknownProduct)}
              </span>
              <Button variant="default" onClick={() => delivery.bringBack(lastOut.key)}>
                {words.bringBack}
              </Button>
            </Group>
          </Note>
        )}
        {draft.lines.length === 0 && <p>{words.noLines}</p>}
        {draft.lines.length > 0 && (
          <Entries label={words.lines}>
            {draft.lines.map((line) => (
              <LineEntry key={line.key} line={line} around={around} />
            ))}
          </Entries>
        )}
      </Section>
      <Section title={words.delivery} hint={words.deliveryHint}>
        <DeliveryFields
          studioId={studioId}
          delivery={delivery}
          draft={draft}
          places={places}
          usualPlaceId={usualPlaceId}
          mayChangeRegister={mayChangeRegister}
          problem={taking.problem}
        />
      </Section>
      <Section title={words.review} hint={words.reviewHint}>
        <TakeInPart
          draft={draft}
          usualPlaceId={usualPlaceId}
          currency={currency}
          reviewed={taking.reviewed}
          ready={studio.answer !== undefined && placesHere.answer !== undefined}
          busy={taking.busy}
          problem={taking.problem}
          onTakeIn={() => void taking.run()}
        />
      </Section>
    </Page>
  );
}
