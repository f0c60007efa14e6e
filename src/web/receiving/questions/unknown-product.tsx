import { Button, Group } from '@mantine/core';
import { useRef, useState } from 'react';
import type { ProductView } from '../../../catalogue/products.views.js';
import { AddProductForm } from '../../catalogue/add-product-form.js';
import { addGtin } from '../../catalogue/catalogue.requests.js';
import { newProductDraft } from '../../catalogue/product-draft.js';
import { ContentField } from '../../catalogue/product-gtins.js';
import { ProductSearch } from '../../catalogue/product-search.js';
import { wordsOfProduct } from '../../catalogue/product-words.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import type { LineDraft } from '../line-draft.js';
import type { LineSurroundings } from '../line-entry.js';
import styles from '../receiving.module.css';

/**
 * What is this? A number that is not in the register is joined to a product that is, or to one that is made here and now;
 * who may not change the register chooses the product for this delivery only.
 */
export function UnknownProduct({ line, around }: { line: LineDraft; around: LineSurroundings }) {
  const texts = useTexts();
  const words = texts.receiving;
  const { studioId, delivery, mayChangeRegister, onAnswered } = around;
  const gtin = line.scanned?.gtin ?? null;
  const joins = gtin !== null && mayChangeRegister;
  const [chosen, setChosen] = useState<ProductView>();
  const [content, setContent] = useState(line.making?.content ?? '1');
  const makes = line.making?.shown === true;
  const keep = (making: LineDraft['making']) => delivery.changeLine(line.key, { making });
  const ids = useRef(new RequestIds()).current;

  const know = (product: ProductView, contentCount: number | null) => {
    const same = delivery
      .read()
      .lines.filter(({ key, scanned }) => key === line.key || (gtin !== null && scanned?.gtin === gtin));
    for (const { key } of same) delivery.changeLine(key, { product, contentCount, making: null });
    onAnswered();
  };
  const { run, busy, problem } = useAction(async (product: ProductView) => {
    setChosen(product);
    if (!joins) return know(product, null);
    const number = { gtin, contentCount: Number(content) };
    const known = await addGtin(studioId, product.id, {
      id: ids.for({ product: product.id, ...number }),
      ...number,
    });
    know(known, number.contentCount);
  });

  return (
    <div className={styles.question}>
      <p>{gtin === null ? words.whichProduct : words.unknownGtin(gtin)}</p>
      {gtin !== null && !mayChangeRegister && <p>{words.unknownForArtist}</p>}
      {mayChangeRegister && (
        <Group gap="sm">
          <Button
            variant={makes ? 'default' : 'filled'}
            aria-pressed={!makes}
            onClick={() => keep(line.making && { ...line.making, shown: false })}
          >
            {words.chooseProduct}
          </Button>
          <Button
            variant={makes ? 'filled' : 'default'}
            aria-pressed={makes}
            onClick={() =>
              keep({ content, product: line.making?.product ?? newProductDraft('pigment'), shown: true })
            }
          >
            {words.makeProduct}
          </Button>
        </Group>
      )}
      {joins && (
        <ContentField
          value={content}
          onChange={(pieces) => {
            setContent(pieces);
            if (line.making) keep({ ...line.making, content: pieces });
          }}
        />
      )}
      {!makes && (
        <ProductSearch
          studioId={studioId}
          label={joins ? words.joinTo : words.product}
          onChosen={(product) => void run(product)}
        />
      )}
      {makes && line.making && (
        <AddProductForm
          studioId={studioId}
          label={words.makeProduct}
          start={line.making.product}
          onDraft={(product) => keep({ content, product, shown: true })}
          onAdded={async (product) => {
            // Should its number be refused, the product is there to be chosen.
            keep(null);
            await run(product);
          }}
        />
      )}
      {busy && chosen && <p>{words.joining(wordsOfProduct(chosen))}</p>}
      <ProblemNote problem={problem} />
    </div>
  );
}
