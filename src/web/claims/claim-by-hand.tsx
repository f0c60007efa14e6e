import { Button, Group } from '@mantine/core';
import { useState } from 'react';
import type { ProductView } from '../../catalogue/products.views.js';
import { type ClaimReason, claimReasons } from '../../reorder/claims/vocabulary.js';
import type { LotSummaryView } from '../../stock/lot-list.views.js';
import { CompanyField } from '../catalogue/company-field.js';
import { ProductSearch } from '../catalogue/product-search.js';
import { wordsOfProduct } from '../catalogue/product-words.js';
import { Choice } from '../frame/choice.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useAnswer } from '../service/use-answer.js';
import { listLots } from '../stock/lots/lots.requests.js';
import type { Texts } from '../texts/en/english.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import styles from './claims.module.css';
import { OpenClaimForm } from './open-claim-form.js';

/** A claim that nothing suggests: of whom, why, and – if it is about a lot – of which. */
export function ClaimByHand({
  studioId,
  currency,
  onOpened,
}: {
  studioId: string;
  currency: string;
  onOpened: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.supplierClaims;
  const [isOpening, setIsOpening] = useState(false);
  const [supplierId, setSupplierId] = useState('');
  const [reason, setReason] = useState<ClaimReason | ''>('');
  const [lotId, setLotId] = useState('');
  const close = () => {
    setIsOpening(false);
    setSupplierId('');
    setReason('');
    setLotId('');
  };
  if (!isOpening) {
    return (
      <Group>
        <Button variant="default" onClick={() => setIsOpening(true)}>
          {words.byHandBegin}
        </Button>
      </Group>
    );
  }
  return (
    <div className={styles.byHand}>
      <CompanyField
        studioId={studioId}
        kind="supplier"
        mayAdd={false}
        value={supplierId}
        onChange={setSupplierId}
      />
      <Choice
        label={words.reason}
        value={reason}
        none={words.chooseReason}
        required
        choices={claimReasons.map((value) => ({ value, label: words.reasons[value] }))}
        onChange={setReason}
      />
      <LotField studioId={studioId} lotId={lotId} onChange={setLotId} />
      {supplierId !== '' && reason !== '' ? (
        <OpenClaimForm
          studioId={studioId}
          claimed={{ supplierId, reason, ...(lotId !== '' && { lotId }) }}
          written={{ pieces: '', amount: '', note: '' }}
          currency={currency}
          label={words.byHand}
          onOpened={async () => {
            close();
            await onOpened();
          }}
          onCancel={close}
        />
      ) : (
        <Group>
          <Button variant="default" onClick={close}>
            {texts.app.cancel}
          </Button>
        </Group>
      )}
    </div>
  );
}

/** The lot a claim is about: first its product, then which of its lots; or none. */
function LotField({
  studioId,
  lotId,
  onChange,
}: {
  studioId: string;
  lotId: string;
  onChange: (lotId: string) => void;
}) {
  const texts = useTexts();
  const words = texts.supplierClaims;
  const [product, setProduct] = useState<ProductView>();
  if (!product) return <ProductSearch studioId={studioId} label={words.whichProduct} onChosen={setProduct} />;
  return (
    <>
      <p>
        <strong>{wordsOfProduct(product)}</strong>
      </p>
      <LotChoice studioId={studioId} productId={product.id} lotId={lotId} onChange={onChange} />
      <Group>
        <Button
          variant="subtle"
          onClick={() => {
            setProduct(undefined);
            onChange('');
          }}
        >
          {words.anotherProduct}
        </Button>
      </Group>
    </>
  );
}

function LotChoice({
  studioId,
  productId,
  lotId,
  onChange,
}: {
  studioId: string;
  productId: string;
  lotId: string;
  onChange: (lotId: string) => void;
}) {
  const texts = useTexts();
  const words = texts.supplierClaims;
  const { answer, problem } = useAnswer(['lots to claim', studioId, productId], () =>
    listLots(studioId, { productId }, undefined),
  );
  if (!answer) {
    return problem ? <ProblemNote problem={problem} /> : <p role="status">{texts.app.loading}</p>;
  }
  return (
    <Choice
      label={words.whichLot}
      description={words.whichLotHint}
      value={lotId}
      none={words.noLot}
      choices={answer.items.map((lot) => ({ value: lot.id, label: nameOfLot(lot, texts) }))}
      onChange={onChange}
    />
  );
}

function nameOfLot({ code, useBy, createdAt }: LotSummaryView, texts: Texts): string {
  const words = texts.supplierClaims;
  const { language } = texts;
  return [
    code === null ? words.lotWithoutCode : words.lot(code),
    useBy === null
      ? words.recordedOn(writtenDay(createdAt.slice(0, 10), language))
      : words.lotThrough(writtenDay(useBy, language)),
  ].join(', ');
}
