import { Button } from '@mantine/core';
import { wordsOfProduct } from '../catalogue/product-words.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import type { ServiceProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import type { DeliveryDraft } from './delivery-draft.js';
import { lacksOfLine } from './handed-in-line.js';
import { type LineDraft, piecesOf } from './line-draft.js';
import { idOfLine } from './line-entry.js';
import styles from './receiving.module.css';

/** The last look before a delivery is taken in: how much it is, and what is still to be settled at which line. */
export function TakeInPart({
  draft,
  usualPlaceId,
  currency,
  reviewed,
  ready,
  busy,
  problem,
  onTakeIn,
}: {
  draft: DeliveryDraft;
  usualPlaceId: string;
  currency: string;
  reviewed: boolean;
  /** Whether it is known where it can go, and in which currency and time zone. */
  ready: boolean;
  busy: boolean;
  problem: ServiceProblem | undefined;
  onTakeIn: () => void;
}) {
  const texts = useTexts();
  const words = texts.receiving;
  const { lines } = draft;
  const pieces = lines.reduce((sum, line) => sum + piecesOf(line), 0);
  const unsettled = [...lines]
    .reverse()
    .filter((line) => line.faults.length > 0 || lacksOfLine(line, usualPlaceId, currency).length > 0);
  // What stands at the lines is not said twice.
  const standsAtLines =
    problem !== undefined &&
    (problem.code === 'same-code-other-use-by' ||
      ((problem.document.faults ?? []).length > 0 &&
        problem.document.faults?.every(({ field }) => field.startsWith('lines.'))));
  return (
    <>
      <p className={styles.total}>{words.total(lines.length, pieces)}</p>
      {reviewed && lines.length === 0 && (
        <Note kind="fault">
          <p>{words.nothingYet}</p>
        </Note>
      )}
      {(reviewed || standsAtLines) && unsettled.length > 0 && (
        <Note kind="fault">
          <p>{words.unsettled(unsettled.length)}</p>
          <ul className={styles.lacks}>
            {unsettled.map((line) => (
              <li key={line.key}>
                <Button variant="subtle" onClick={() => goTo(line)}>
                  {words.toLine(nameOf(line, words.unknownProduct))}
                </Button>
              </li>
            ))}
          </ul>
        </Note>
      )}
      {!standsAtLines && <ProblemNote problem={problem} />}
      <div>
        <Button mt="md" loading={busy} disabled={!ready} onClick={onTakeIn}>
          {words.takeIn}
        </Button>
      </div>
    </>
  );
}

function nameOf({ product, scanned, lotCode }: LineDraft, unknown: string): string {
  const lot = scanned?.lotCode ?? lotCode;
  return [product ? wordsOfProduct(product) : unknown, lot].filter((part) => part !== '').join(', ');
}

function goTo({ key }: LineDraft): void {
  const line = document.getElementById(idOfLine(key));
  line?.scrollIntoView({ block: 'center' });
  line?.focus({ preventScroll: true });
}
