import { Button, Checkbox, TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { useState } from 'react';
import type { ProductView } from '../../catalogue/products.views.js';
import { type ProductKind, productKinds } from '../../catalogue/vocabulary.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Choice } from '../frame/choice.js';
import { Note } from '../frame/note.js';
import { Page } from '../frame/page.js';
import { PagedEntries } from '../frame/paged-entries.js';
import { Section } from '../frame/section.js';
import { usePages } from '../service/use-pages.js';
import { useTexts } from '../texts/texts.js';
import { AddProductForm } from './add-product-form.js';
import styles from './catalogue.module.css';
import { listProducts } from './catalogue.requests.js';
import { ProductEntry } from './product-entry.js';
import { wordsOfProduct } from './product-words.js';

/** The register of products: what can be received and used. */
export function ProductsPage({ standing: { studioId, studioName } }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.products;
  const [text, setText] = useState('');
  const [kind, setKind] = useState<ProductKind | ''>('');
  const [archived, setArchived] = useState(false);
  const [adding, setAdding] = useState(false);
  const [added, setAdded] = useState<ProductView>();
  const [asked] = useDebouncedValue(text.trim(), 200);
  const list = usePages(['products', studioId, asked, kind, String(archived)], (after) =>
    listProducts(studioId, {
      after,
      ...(asked !== '' && { text: asked }),
      ...(kind !== '' && { kind }),
      ...(archived && { archived: 'shown' }),
    }),
  );
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.add} hint={words.addHint}>
        {added && (
          <Note kind="good">
            <p>{words.added(wordsOfProduct(added))}</p>
          </Note>
        )}
        {adding ? (
          <AddProductForm
            studioId={studioId}
            label={words.add}
            onAdded={async (product) => {
              setAdded(product);
              await list.reload();
            }}
            onCancel={() => setAdding(false)}
          />
        ) : (
          <Button onClick={() => setAdding(true)}>{words.add}</Button>
        )}
      </Section>
      <Section title={words.list} hint={words.listHint}>
        <div className={styles.search}>
          <TextInput
            label={words.search}
            autoComplete="off"
            maxLength={100}
            value={text}
            onChange={(event) => setText(event.currentTarget.value)}
          />
          <Choice
            label={words.kind}
            value={kind}
            none={words.allKinds}
            choices={productKinds.map((value) => ({ value, label: words.kinds[value] }))}
            onChange={setKind}
          />
          <Checkbox
            className={styles.tick ?? ''}
            label={words.showArchived}
            checked={archived}
            onChange={(event) => setArchived(event.currentTarget.checked)}
          />
        </div>
        <PagedEntries
          label={words.list}
          list={list}
          none={asked !== '' ? words.noneFound(asked) : kind !== '' ? texts.levels.nothingFound : words.empty}
          entry={(product) => (
            <ProductEntry key={product.id} studioId={studioId} product={product} onChanged={list.reload} />
          )}
        />
      </Section>
    </Page>
  );
}
