import { Button } from '@mantine/core';
import type { PlaceView } from '../../stock/places.views.js';
import { wordsOfProduct } from '../catalogue/product-words.js';
import { Entry } from '../frame/entries.js';
import { Note } from '../frame/note.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import type { KeptDelivery } from './delivery-draft.js';
import { type LineLack, lacksOfLine } from './handed-in-line.js';
import { type LineDraft, piecesInOne } from './line-draft.js';
import { LineForm } from './line-form.js';
import { placeOfLine } from './line-places.js';
import { AgainQuestion } from './questions/again-question.js';
import { SameCodeQuestion } from './questions/same-code-question.js';
import { UnknownProduct } from './questions/unknown-product.js';
import styles from './receiving.module.css';

export interface LineSurroundings {
  studioId: string;
  delivery: KeptDelivery;
  /** Where the delivery goes; empty: nothing is chosen. */
  usualPlaceId: string;
  places: readonly PlaceView[];
  currency: string;
  mayChangeRegister: boolean;
  /** Whether it was tried to take the delivery in: then what is lacking is said. */
  reviewed: boolean;
  /** The line that is asked about right below the scan field; undefined when none is. */
  askedAbove: string | undefined;
  /** Puts the cursor where the next scan is typed. */
  onAnswered: () => void;
}

export function idOfLine(key: string): string {
  return `line-${key}`;
}

/** One line of a delivery: what it is, what is to be answered of it, and its fields. */
export function LineEntry({ line, around }: { line: LineDraft; around: LineSurroundings }) {
  const texts = useTexts();
  const words = texts.receiving;
  const { delivery, usualPlaceId, currency, reviewed, onAnswered } = around;
  const { key, scanned, product } = line;
  const name = product ? wordsOfProduct(product) : words.unknownProduct;
  const lot = scanned?.lotCode ?? line.lotCode;
  const useBy = scanned?.useBy ?? null;
  const each = piecesInOne(line);
  const place = placeOfLine(line, around);
  const lacks = lacksOfLine(line, usualPlaceId, currency).filter((lack) => !askedAtTheLine.has(lack));
  const facts = [
    line.codeState === 'printed' ? lot !== '' && words.lot(lot) : words.lotStates[line.codeState],
    useBy !== null
      ? words.usableThrough(writtenDay(useBy, texts.language))
      : line.noUseBy
        ? words.noUseBy
        : line.useBy !== '' && words.typedUseBy(line.useBy),
    place?.name,
  ].filter((fact) => fact !== false && fact !== undefined && fact !== '');
  return (
    <Entry
      name={name}
      mark={each === 1 ? words.pieces(Number(line.quantity) || 0) : words.packs(line.quantity, each)}
      actions={
        <>
          {product !== null && !line.open && (
            <Button
              variant="default"
              aria-label={words.changeOf(name)}
              onClick={() => delivery.changeLine(key, { open: true })}
            >
              {words.change}
            </Button>
          )}
          <Button
            variant="default"
            aria-label={words.takeOutOf(name)}
            onClick={() => {
              delivery.takeOut(key);
              onAnswered();
            }}
          >
            {words.takeOut}
          </Button>
        </>
      }
      below={
        <div className={styles.below} id={idOfLine(key)} tabIndex={-1}>
          {product === null && <UnknownProduct line={line} around={around} />}
          {line.again > 0 && key !== around.askedAbove && <AgainQuestion line={line} around={around} />}
          <SameCodeQuestion line={line} around={around} />
          {(!line.open || product === null) && line.faults.length > 0 && (
            <Note kind="fault">
              {line.faults.map(({ field, message }) => (
                <p key={`${field} ${message}`}>{message}</p>
              ))}
            </Note>
          )}
          {reviewed && product !== null && lacks.length > 0 && (
            <Note kind="fault">
              {lacks.map((lack) => (
                <p key={lack}>{words.lacks[lack]}</p>
              ))}
            </Note>
          )}
          {line.open && product !== null && <LineForm line={line} around={around} />}
        </div>
      }
    >
      {facts.length > 0 && <p>{facts.join(', ')}</p>}
    </Entry>
  );
}

/** These are questions that stand open at the line already. */
const askedAtTheLine: ReadonlySet<LineLack> = new Set(['product', 'again', 'decision']);
