import { Button } from '@mantine/core';
import { useState } from 'react';
import { ProductSearch } from '../../catalogue/product-search.js';
import { useTexts } from '../../texts/texts.js';
import type { SuggestedProduct } from '../matches/suggested-products.js';
import { ProductName } from './product-name.js';
import styles from './scope.module.css';

/** Which products of the register are meant, chosen by a person. */
export function ChosenProducts({
  studioId,
  productIds,
  suggested,
  onChanged,
}: {
  studioId: string;
  productIds: readonly string[];
  /** What may be meant by what is typed; offered until one is chosen. */
  suggested: readonly SuggestedProduct[];
  onChanged: (productIds: string[]) => void;
}) {
  const texts = useTexts();
  const words = texts.scope;
  const [choosing, setChoosing] = useState(false);
  return (
    <div>
      {productIds.length > 0 && (
        <>
          <h3 className={styles.heading}>{words.register}</h3>
          <p className={styles.hint}>{words.registerHint}</p>
          <ul className={styles.terms} aria-label={words.register}>
            {productIds.map((productId) => (
              <li key={productId} className={styles.term}>
                <span>
                  <ProductName studioId={studioId} productId={productId} />
                </span>
                <Button
                  variant="subtle"
                  onClick={() => onChanged(productIds.filter((one) => one !== productId))}
                >
                  {words.takeAway}
                </Button>
              </li>
            ))}
          </ul>
        </>
      )}
      {productIds.length === 0 && suggested.length > 0 && (
        <>
          <p className={styles.hint}>{words.suggestedHint}</p>
          <ul className={styles.terms} aria-label={words.suggested}>
            {suggested.map(({ id, name }) => (
              <li key={id} className={styles.term}>
                <span>{name}</span>
                <Button
                  variant="subtle"
                  px="xs"
                  aria-label={words.itIsOf(name)}
                  onClick={() => onChanged([id])}
                >
                  {words.itIs}
                </Button>
              </li>
            ))}
          </ul>
        </>
      )}
      {choosing && (
        <div className={styles.form}>
          <ProductSearch
            studioId={studioId}
            label={words.find}
            isOffered={({ id }) => !productIds.includes(id)}
            onChosen={({ id }) => {
              onChanged([...productIds, id]);
              setChoosing(false);
            }}
          />
        </div>
      )}
      <Button variant="default" onClick={() => setChoosing(!choosing)} {...(choosing && { mt: 'md' })}>
        {choosing ? words.chooseDone : words.choose}
      </Button>
    </div>
  );
}
