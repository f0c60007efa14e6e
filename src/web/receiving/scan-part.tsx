import { Button, Group, TextInput } from '@mantine/core';
import { type RefObject, useState } from 'react';
import { v7 as uuidv7 } from 'uuid';
import { wordsOfProduct } from '../catalogue/product-words.js';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { deviceSettings } from '../scanner/device-settings.js';
import { Scanner } from '../scanner/scanner.js';
import { withSeparators } from '../scanner/typed-symbol.js';
import { useTexts } from '../texts/texts.js';
import type { DeliveryDraft } from './delivery-draft.js';
import { newLine } from './line-draft.js';
import type { LineSurroundings } from './line-entry.js';
import { AgainQuestion } from './questions/again-question.js';
import styles from './receiving.module.css';
import type { ScanOutcome, useReadings } from './use-readings.js';

/** Longer than any symbol on goods. */
const longestSymbol = 500;

/** Where goods are scanned in, and what came of the last scan. */
export function ScanPart({
  field,
  draft,
  readings,
  around,
}: {
  field: RefObject<HTMLInputElement | null>;
  draft: DeliveryDraft;
  readings: ReturnType<typeof useReadings>;
  around: LineSurroundings;
}) {
  const texts = useTexts();
  const words = texts.receiving;
  const [text, setText] = useState('');
  const submit = () => {
    if (text.trim() === '') return;
    setText('');
    readings.show(withSeparators(text, deviceSettings().separatorSubstitute));
  };
  const { last, busy, problem } = readings;
  const waiting = draft.unread.length;
  return (
    <div className={styles.scan}>
      <Scanner field={field} scan={undefined} onShown={readings.show} />
      <Fields onSubmit={submit} label={words.scan}>
        <div className={styles.row}>
          <TextInput
            ref={field}
            autoFocus
            label={words.scan}
            description={words.scanHint}
            autoComplete="off"
            autoCapitalize="off"
            spellCheck={false}
            maxLength={longestSymbol}
            value={text}
            onChange={(event) => setText(event.currentTarget.value)}
          />
          <Button type="submit" variant="default">
            {words.read}
          </Button>
        </div>
      </Fields>
      <ProblemNote problem={problem} />
      {waiting > 0 && !busy && (
        <Note kind="fault">
          <p>{words.waiting(waiting)}</p>
          <Button variant="default" mt="sm" onClick={readings.sendAgain}>
            {words.sendAgain}
          </Button>
        </Note>
      )}
      {last && <Outcome last={last} draft={draft} around={around} onMakers={readings.takeForMakers} />}
      <Group>
        <Button variant="default" onClick={() => around.delivery.putInFront(newLine(uuidv7(), {}))}>
          {words.byHand}
        </Button>
      </Group>
    </div>
  );
}

function Outcome({
  last,
  draft,
  around,
  onMakers,
}: {
  last: ScanOutcome;
  draft: DeliveryDraft;
  around: LineSurroundings;
  onMakers: ReturnType<typeof useReadings>['takeForMakers'];
}) {
  const texts = useTexts();
  const words = texts.receiving;
  if (last.kind === 'unreadable') {
    return (
      <Note kind="fault">
        <p>{words.unreadable(last.symbol.text.slice(0, 60))}</p>
        {last.symbol.faults.map(({ code, position, message }) => (
          <p key={`${code} ${position}`}>{message}</p>
        ))}
      </Note>
    );
  }
  if (last.kind === 'no goods') {
    return (
      <Note kind="fault">
        <p>{words.noGoods}</p>
      </Note>
    );
  }
  if (last.kind === 'own label') {
    return (
      <Note kind="fault">
        <p>{words.ownLabel(last.labelCode)}</p>
        <Button variant="default" mt="sm" onClick={() => onMakers(last.symbol)}>
          {words.notOwnLabel}
        </Button>
      </Note>
    );
  }
  const line = draft.lines.find(({ key }) => key === last.key);
  if (!line) return null;
  const name = line.product ? wordsOfProduct(line.product) : words.unknownProduct;
  if (last.kind === 'new line') {
    return (
      <Note kind={line.product ? 'good' : 'plain'}>
        <p>{line.product ? words.scannedNew(name) : words.scannedUnknown}</p>
        {last.doubts?.map((doubt) => (
          <p key={doubt}>{doubt}</p>
        ))}
      </Note>
    );
  }
  if (last.kind === 'one more') {
    return (
      <Note kind="good">
        <p>{words.scannedMore(name, line.quantity)}</p>
      </Note>
    );
  }
  if (last.kind === 'same piece') {
    return (
      <Note kind="plain">
        <p>{words.scannedSamePiece(name)}</p>
      </Note>
    );
  }
  return line.again === 0 ? null : (
    <div role="status">
      <AgainQuestion line={line} around={around} />
    </div>
  );
}
