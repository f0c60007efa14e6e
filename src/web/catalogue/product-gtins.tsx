import { Button, Group, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { GtinView, ProductView } from '../../catalogue/products.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { Fields } from '../frame/fields.js';
import { ProblemNote } from '../frame/problem-note.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { addGtin, correctGtin } from './catalogue.requests.js';
import { ProductSearch } from './product-search.js';
import { wordsOfProduct } from './product-words.js';

/** The numbers under which a product is traded: its unit, and packs of it. */
export function ProductGtins({
  studioId,
  product,
  onChanged,
}: {
  studioId: string;
  product: ProductView;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const [gtin, setGtin] = useState('');
  const [content, setContent] = useState('1');
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const added = { gtin: gtin.trim(), contentCount: Number(content) };
    await addGtin(studioId, product.id, { id: ids.for(added), ...added });
    ids.renew();
    setGtin('');
    setContent('1');
    await onChanged();
  });
  const exists = problem?.detailOf('already-exists');
  return (
    <>
      {product.gtins.length > 0 && (
        <Entries label={texts.products.gtins}>
          {product.gtins.map((known) => (
            <GtinEntry
              key={known.gtin}
              studioId={studioId}
              product={product}
              gtin={known}
              onChanged={onChanged}
            />
          ))}
        </Entries>
      )}
      <Fields onSubmit={() => void run()} label={texts.products.addGtinOf(wordsOfProduct(product))}>
        <TextInput
          label={texts.products.gtin}
          description={texts.products.gtinHint}
          required
          inputMode="numeric"
          maxLength={20}
          autoComplete="off"
          value={gtin}
          error={exists ?? problem?.faultOf('gtin')}
          onChange={(event) => setGtin(event.currentTarget.value)}
        />
        <ContentField value={content} error={problem?.faultOf('contentCount')} onChange={setContent} />
        <ProblemNote problem={exists === undefined ? problem : undefined} />
        <div>
          <Button type="submit" variant="default" loading={busy}>
            {texts.products.addGtin}
          </Button>
        </div>
      </Fields>
    </>
  );
}

/** Pieces in what carries a number. */
export function ContentField({
  value,
  error,
  onChange,
}: {
  value: string;
  error?: string | undefined;
  onChange: (pieces: string) => void;
}) {
  const texts = useTexts();
  return (
    <TextInput
      type="number"
      inputMode="numeric"
      min={1}
      max={10_000}
      step={1}
      label={texts.products.content}
      description={texts.products.contentHint}
      required
      value={value}
      error={error}
      onChange={(event) => onChange(event.currentTarget.value)}
    />
  );
}

function GtinEntry({
  studioId,
  product,
  gtin: { gtin, contentCount, version },
  onChanged,
}: {
  studioId: string;
  product: ProductView;
  gtin: GtinView;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const [correcting, setCorrecting] = useState(false);
  const [content, setContent] = useState(String(contentCount));
  const [owner, setOwner] = useState<ProductView>();
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const correction = {
      version,
      contentCount: Number(content),
      ...(owner && { productId: owner.id }),
    };
    await readAnewIfStale(
      () => correctGtin(studioId, product.id, gtin, { id: ids.for(correction), ...correction }),
      onChanged,
    );
    ids.renew();
    setCorrecting(false);
    await onChanged();
  });
  return (
    <Entry
      name={gtin}
      actions={
        !correcting && (
          <Button
            variant="default"
            aria-label={texts.products.correctGtinOf(gtin)}
            onClick={() => setCorrecting(true)}
          >
            {texts.products.correctGtin}
          </Button>
        )
      }
      below={
        correcting && (
          <Fields onSubmit={() => void run()} label={texts.products.correctGtinOf(gtin)}>
            <p>{texts.products.correctGtinHint}</p>
            <ContentField value={content} error={problem?.faultOf('contentCount')} onChange={setContent} />
            {owner ? (
              <Group gap="sm">
                <span>{texts.products.movesTo(wordsOfProduct(owner))}</span>
                <Button variant="subtle" onClick={() => setOwner(undefined)}>
                  {texts.products.keepHere}
                </Button>
              </Group>
            ) : (
              <ProductSearch
                studioId={studioId}
                label={texts.products.moveGtin}
                onChosen={setOwner}
                isOffered={({ id }) => id !== product.id}
              />
            )}
            <SaveOrCancel problem={problem} busy={busy} onCancel={() => setCorrecting(false)} />
          </Fields>
        )
      }
    >
      <p>{texts.products.contains(contentCount)}</p>
    </Entry>
  );
}
