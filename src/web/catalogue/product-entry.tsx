import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { ProductView } from '../../catalogue/products.views.js';
import { readOpenedLife } from '../../identity/opened-life-duration.js';
import { Entry } from '../frame/entries.js';
import { ProblemNote } from '../frame/problem-note.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import type { Texts } from '../texts/en/english.js';
import { useTexts } from '../texts/texts.js';
import { archiveProduct, restoreProduct } from './catalogue.requests.js';
import { ChangeProductForm } from './change-product-form.js';
import { ProductGtins } from './product-gtins.js';
import { wordsOfProduct } from './product-words.js';

/** One product of the register, with what can be changed of it. Archiving is taken back by restoring. */
export function ProductEntry({
  studioId,
  product,
  onChanged,
}: {
  studioId: string;
  product: ProductView;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.products;
  const [open, setOpen] = useState<'fields' | 'numbers'>();
  const ids = useRef(new RequestIds()).current;
  const name = wordsOfProduct(product);
  const { run, busy, problem } = useAction(async () => {
    const { version, archived } = product;
    const write = { id: ids.for({ version, archived }), version };
    await readAnewIfStale(
      () => (archived ? restoreProduct : archiveProduct)(studioId, product.id, write),
      onChanged,
    );
    ids.renew();
    await onChanged();
  });
  return (
    <Entry
      name={name}
      mark={product.archived ? words.archived : words.kinds[product.kind]}
      actions={
        open === undefined && (
          <>
            <Button variant="default" aria-label={words.changeOf(name)} onClick={() => setOpen('fields')}>
              {words.change}
            </Button>
            <Button variant="default" aria-label={words.gtinsOf(name)} onClick={() => setOpen('numbers')}>
              {words.gtins}
            </Button>
            <Button
              variant="default"
              loading={busy}
              aria-label={product.archived ? words.restoreOf(name) : words.archiveOf(name)}
              onClick={() => void run()}
            >
              {product.archived ? words.restore : words.archive}
            </Button>
          </>
        )
      }
      below={
        <>
          <ProblemNote problem={problem} />
          {open === 'fields' && (
            <ChangeProductForm
              studioId={studioId}
              product={product}
              onChanged={async () => {
                await onChanged();
                setOpen(undefined);
              }}
              onStale={onChanged}
              onCancel={() => setOpen(undefined)}
            />
          )}
          {open === 'numbers' && (
            <>
              <ProductGtins studioId={studioId} product={product} onChanged={onChanged} />
              <Button mt="md" variant="subtle" onClick={() => setOpen(undefined)}>
                {texts.app.close}
              </Button>
            </>
          )}
        </>
      }
    >
      <p>{factsOf(product, texts).join(', ')}</p>
    </Entry>
  );
}

function factsOf(product: ProductView, { products: words, language }: Texts): string[] {
  const life = product.openedLife === null ? null : readOpenedLife(product.openedLife);
  const { volumeMicrolitres, dropMicrolitres, machineFit, membrane, points, notation, gtins } = product;
  const number = new Intl.NumberFormat(language);
  return [
    product.pigmentRole === 'thinner' && words.pigmentRoles.thinner,
    volumeMicrolitres !== null && words.millilitresOf(number.format(volumeMicrolitres / 1000)),
    dropMicrolitres !== null && words.dropOf(number.format(dropMicrolitres)),
    life !== null && !('error' in life) && words.openedLifeOf(life.amount, life.unit),
    notation === null && points !== null && words.pointsOf(points),
    machineFit !== null && machineFit,
    membrane === 'yes' && words.withMembrane,
    words.gtinCount(gtins.length),
  ].filter((fact) => fact !== false);
}
