import { Button, Checkbox, Group } from '@mantine/core';
import { useState } from 'react';
import { useSearchParams } from 'react-router';
import type { ProductView } from '../../../catalogue/products.views.js';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { ContainerView } from '../../../stock/container-list.views.js';
import { ProductSearch } from '../../catalogue/product-search.js';
import { wordsOfProduct } from '../../catalogue/product-words.js';
import { MoreButton } from '../../frame/more-button.js';
import { PageLink } from '../../frame/navigation.js';
import { Page } from '../../frame/page.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import styles from '../receiving.module.css';
import { LabelPrinting } from './label-printing.js';
import { type LabelSource, listContainersOf, sourceOf } from './label-source.js';

/** Labels for bottles and boxes that are here: of a delivery, of a lot, or of a product that is looked for. */
export function LabelsPage({ standing: { studioId, studioName } }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.labels;
  const [query, setQuery] = useSearchParams();
  const [product, setProduct] = useState<ProductView>();
  const source = sourceOf(query);
  const choose = (chosen: ProductView) => {
    setProduct(chosen);
    setQuery({ product: chosen.id });
  };
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.which} hint={words.whichHint}>
        {product?.id === source?.id && product ? (
          <Group gap="sm">
            <span>{wordsOfProduct(product)}</span>
            <Button variant="subtle" onClick={() => setProduct(undefined)}>
              {texts.products.chooseAnother}
            </Button>
          </Group>
        ) : (
          <ProductSearch studioId={studioId} label={texts.receiving.product} onChosen={choose} />
        )}
        <p>
          <PageLink to={pathOf({ studioId, area: 'stock' }, 'deliveries')}>{words.orDelivery}</PageLink>
        </p>
      </Section>
      {source && (
        <Choosing
          key={`${source.kind} ${source.id}`}
          studioId={studioId}
          source={source}
          {...(product?.id === source.id && { name: wordsOfProduct(product) })}
        />
      )}
    </Page>
  );
}

function Choosing({ studioId, source, name }: { studioId: string; source: LabelSource; name?: string }) {
  const texts = useTexts();
  const words = texts.labels;
  const list = usePages(['containers for labels', studioId, source.kind, source.id], (after) =>
    listContainersOf(studioId, source, after),
  );
  /** Those that are not to be printed: whatever is listed is, unless it is unticked. */
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const containers = list.items ?? [];
  const chosen = containers.filter(({ id }) => !left.has(id)).map(({ id }) => id);
  return (
    <>
      <Section title={words.choose} hint={name ?? words.chooseHint[source.kind]}>
        <ProblemNote problem={list.problem} />
        {!list.items && !list.problem && <p role="status">{texts.app.loading}</p>}
        {list.items?.length === 0 && <p role="status">{words.none}</p>}
        {containers.length > 0 && (
          <>
            <Group>
              <Button variant="default" onClick={() => setLeft(new Set())}>
                {words.all}
              </Button>
              <Button variant="default" onClick={() => setLeft(new Set(containers.map(({ id }) => id)))}>
                {words.noneOfThem}
              </Button>
            </Group>
            <Checkbox.Group
              aria-label={words.choose}
              value={chosen}
              onChange={(ticked) =>
                setLeft(new Set(containers.map(({ id }) => id).filter((id) => !ticked.includes(id))))
              }
            >
              <div className={styles.choices}>
                {containers.map((container) => (
                  <Checkbox
                    key={container.id}
                    value={container.id}
                    label={`${labelOf(container)}, ${container.labelCode}`}
                    description={factsOf(container, texts)}
                  />
                ))}
              </div>
            </Checkbox.Group>
          </>
        )}
        <MoreButton list={list} />
      </Section>
      {containers.length > 0 && (
        <Section title={words.print} hint={words.printHint}>
          <LabelPrinting studioId={studioId} containerIds={chosen} />
        </Section>
      )}
    </>
  );
}

function labelOf({ makerName, productName, shade }: ContainerView): string {
  return wordsOfProduct({ makerName, name: productName, shade, notation: null });
}

function factsOf(
  { lotCode, codeState, useBy, pieces, form, state }: ContainerView,
  texts: ReturnType<typeof useTexts>,
): string {
  return [
    lotCode === null ? texts.receiving.lotStates[codeState] : texts.receiving.lot(lotCode),
    useBy === null
      ? texts.receiving.noUseBy
      : texts.receiving.usableThrough(writtenDay(useBy, texts.language)),
    form === 'box' && texts.receiving.pieces(pieces),
    texts.containerStates[state],
  ]
    .filter((fact) => fact !== false)
    .join(', ');
}
