import { Button, TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { useState } from 'react';
import type { ProductView } from '../../catalogue/products.views.js';
import type { ProductKind } from '../../catalogue/vocabulary.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import styles from './catalogue.module.css';
import { listProducts } from './catalogue.requests.js';
import { wordsOfProduct } from './product-words.js';

const mostShown = 6;

/** Finds a product by a word of it; each that is found is a button, so it is reached by Tab and pressed by Enter. */
export function ProductSearch({
  studioId,
  label,
  kind,
  isOffered = () => true,
  onChosen,
}: {
  studioId: string;
  label: string;
  kind?: ProductKind;
  isOffered?: (product: ProductView) => boolean;
  onChosen: (product: ProductView) => void;
}) {
  const texts = useTexts();
  const [text, setText] = useState('');
  const [asked] = useDebouncedValue(text.trim(), 200);
  const { answer, problem } = useAnswer(['products found', studioId, kind ?? '', asked], () =>
    listProducts(studioId, {
      limit: mostShown + 1,
      ...(asked !== '' && { text: asked }),
      ...(kind && { kind }),
    }),
  );
  const offered = answer?.items.filter(isOffered);
  // Without a word a long register says nothing; a short one is its own answer.
  const found = asked === '' && (offered?.length ?? 0) > mostShown ? undefined : offered;
  return (
    <div>
      <TextInput
        label={label}
        description={texts.products.searchHint}
        autoComplete="off"
        maxLength={100}
        value={text}
        onChange={(event) => setText(event.currentTarget.value)}
        onKeyDown={(event) => {
          // Enter belongs to the search, not to the form around it.
          if (event.key !== 'Enter') return;
          event.preventDefault();
          // Only what was found by this very text.
          const [only, ...others] = asked === text.trim() ? (found ?? []) : [];
          if (only && others.length === 0) onChosen(only);
        }}
      />
      <ProblemNote problem={problem} />
      {found?.length === 0 && (
        <p className={styles.explained} role="status">
          {asked === '' ? texts.products.noneYet : texts.products.noneFound(asked)}
        </p>
      )}
      {found && found.length > 0 && (
        <ul className={styles.found} aria-label={texts.products.foundBy(label)}>
          {found.slice(0, mostShown).map((product) => (
            <li key={product.id}>
              <Button
                variant="default"
                fullWidth
                className={styles.foundOne ?? ''}
                onClick={() => onChosen(product)}
              >
                {wordsOfProduct(product)}
              </Button>
            </li>
          ))}
        </ul>
      )}
      {found && found.length > mostShown && <p className={styles.explained}>{texts.products.moreFound}</p>}
    </div>
  );
}
