import { Button, Group } from '@mantine/core';
import type { PlaceView } from '../../stock/places.views.js';
import type { ReceiptView, ReceivedLineView } from '../../stock/receiving.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { Note } from '../frame/note.js';
import { pathOf } from '../frame/places.js';
import { Section } from '../frame/section.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { LabelPrinting } from './labels/label-printing.js';
import styles from './receiving.module.css';

/** What became of a delivery: lots, bottles and boxes, what was put aside and why, and their labels. */
export function ReceiptPart({
  studioId,
  receipt,
  names,
  places,
  mayPrint,
  onNext,
}: {
  studioId: string;
  receipt: ReceiptView;
  /** What products are called, by id. */
  names: ReadonlyMap<string, string>;
  places: readonly PlaceView[];
  mayPrint: boolean;
  onNext: () => void;
}) {
  const texts = useTexts();
  const words = texts.receiving;
  const containers = receipt.lines.flatMap((line) => line.containers);
  const holds = receipt.lines.flatMap((line) => line.holds).filter(({ placedNow }) => placedNow);
  return (
    <>
      <Note kind="good">
        <p>{words.takenIn(receipt.lines.length, containers.length)}</p>
        {holds.length > 0 && <p>{words.someHeld(holds.length)}</p>}
      </Note>
      <Group my="lg">
        <Button onClick={onNext}>{words.nextDelivery}</Button>
        <PageLink to={pathOf({ studioId, area: 'stock' }, 'deliveries', receipt.id)} alone>
          {words.toDelivery}
        </PageLink>
      </Group>
      <Section title={words.made} hint={words.madeHint}>
        <Entries label={words.made}>
          {receipt.lines.map((line) => (
            <ReceivedLine key={line.lineNumber} line={line} names={names} places={places} />
          ))}
        </Entries>
      </Section>
      {mayPrint && (
        <Section title={texts.labels.print} hint={texts.labels.printHint}>
          <LabelPrinting studioId={studioId} containerIds={containers.map(({ id }) => id)} />
        </Section>
      )}
    </>
  );
}

function ReceivedLine({
  line,
  names,
  places,
}: {
  line: ReceivedLineView;
  names: ReadonlyMap<string, string>;
  places: readonly PlaceView[];
}) {
  const texts = useTexts();
  const words = texts.receiving;
  const { lot, containers, holds, warnings } = line;
  const facts = [
    lot.code === null ? words.lotStates[lot.codeState] : words.lot(lot.code),
    lot.isNew ? words.newLot : words.moreOfLot,
    lot.useBy === null ? words.noUseBy : words.usableThrough(writtenDay(lot.useBy, texts.language)),
    [...new Set(containers.map(({ placeId }) => places.find(({ id }) => id === placeId)?.name))].join(', '),
  ].filter((fact) => fact !== '');
  return (
    <Entry
      name={names.get(lot.productId) ?? words.unknownProduct}
      mark={words.pieces(line.quantityPieces)}
      below={
        (holds.length > 0 || warnings.length > 0) && (
          <Note kind="fault">
            {holds.map((hold) => (
              <p key={hold.id}>
                {words.held(
                  hold.lotId !== null,
                  texts.receiving.holdReasons[hold.reason as keyof typeof texts.receiving.holdReasons] ??
                    hold.reason,
                )}
              </p>
            ))}
            {warnings.map((warning) => (
              <p key={warning}>{warning}</p>
            ))}
          </Note>
        )
      }
    >
      <p>{facts.join(', ')}</p>
      <p>
        {words.containers(containers.length)}{' '}
        <span className={styles.code}>
          {containers
            .slice(0, mostCodes)
            .map(({ labelCode }) => labelCode)
            .join(', ')}
          {containers.length > mostCodes && ' …'}
        </span>
      </p>
    </Entry>
  );
}

const mostCodes = 12;
