import { Button, Group } from '@mantine/core';
import { v7 as uuidv7 } from 'uuid';
import { wordsOfProduct } from '../../catalogue/product-words.js';
import { useTexts } from '../../texts/texts.js';
import { type LineDraft, newLine } from '../line-draft.js';
import type { LineSurroundings } from '../line-entry.js';
import styles from '../receiving.module.css';
import { oneMore } from '../use-readings.js';

/** The same symbol was shown again: another one, or the same one twice? Only the person knows. */
export function AgainQuestion({ line, around }: { line: LineDraft; around: LineSurroundings }) {
  const texts = useTexts();
  const words = texts.receiving;
  const { delivery, onAnswered } = around;
  const { key, again, scanned, product, contentCount, lotCode } = line;
  const name = product ? wordsOfProduct(product) : words.unknownProduct;
  const answer = (change: Partial<LineDraft>) => {
    delivery.changeLine(key, { again: 0, ...change });
    onAnswered();
  };
  /** A symbol that tells no lot stands on every lot of the product, and one code may stand on two shades. */
  const somethingElse = () => {
    answer({});
    delivery.putInFront(
      newLine(
        uuidv7(),
        scanned !== null && scanned.lotCode === null
          ? { scanned, product, contentCount }
          : { lotCode: scanned?.lotCode ?? lotCode },
      ),
    );
  };
  return (
    <fieldset className={styles.question} aria-label={words.againOf(name)}>
      <p>
        <strong>{name}</strong>
      </p>
      <p>{words.again(again)}</p>
      <Group gap="sm">
        <Button onClick={() => answer({ quantity: oneMore(line, again).quantity })}>
          {words.countMore(again)}
        </Button>
        <Button variant="default" onClick={() => answer({})}>
          {words.sameOne}
        </Button>
        <Button variant="default" onClick={somethingElse}>
          {words.somethingElse}
        </Button>
      </Group>
    </fieldset>
  );
}
