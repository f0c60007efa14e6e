import { Button, Group, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { ProductView } from '../../catalogue/products.views.js';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { declareEquivalence } from './catalogue.requests.js';
import { ProductSearch } from './product-search.js';
import { wordsOfProduct } from './product-words.js';

/** Says that two cartridges stand for each other although not all is known of them, with the reason. */
export function DeclareEquivalenceForm({
  studioId,
  onDeclared,
}: {
  studioId: string;
  onDeclared: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.configurations;
  const [one, setOne] = useState<ProductView>();
  const [other, setOther] = useState<ProductView>();
  const [reason, setReason] = useState('');
  const [lacks, setLacks] = useState(false);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    if (!one || !other) return;
    const declared = { productId: one.id, otherProductId: other.id, reason: reason.trim() };
    await declareEquivalence(studioId, { id: ids.for(declared), ...declared });
    ids.renew();
    setOne(undefined);
    setOther(undefined);
    setReason('');
    await onDeclared();
  });
  const submit = () => {
    setLacks(!one || !other);
    if (one && other) void run();
  };
  return (
    <Fields onSubmit={submit} label={words.declare}>
      <Chosen
        studioId={studioId}
        label={words.one}
        chosen={one}
        isOffered={({ id }) => id !== other?.id}
        onChange={setOne}
      />
      <Chosen
        studioId={studioId}
        label={words.other}
        chosen={other}
        isOffered={({ id }) => id !== one?.id}
        onChange={setOther}
      />
      <TextInput
        label={words.reason}
        description={words.reasonHint}
        required
        maxLength={500}
        autoComplete="off"
        value={reason}
        error={problem?.faultOf('reason')}
        onChange={(event) => setReason(event.currentTarget.value)}
      />
      {lacks && (!one || !other) && (
        <Note kind="fault">
          <p>{words.chooseBoth}</p>
        </Note>
      )}
      <ProblemNote problem={problem} />
      <div>
        <Button type="submit" loading={busy}>
          {words.declareSubmit}
        </Button>
      </div>
    </Fields>
  );
}

function Chosen({
  studioId,
  label,
  chosen,
  isOffered,
  onChange,
}: {
  studioId: string;
  label: string;
  chosen: ProductView | undefined;
  isOffered: (product: ProductView) => boolean;
  onChange: (product: ProductView | undefined) => void;
}) {
  const texts = useTexts();
  if (!chosen) {
    return (
      <ProductSearch
        studioId={studioId}
        label={label}
        kind="cartridge"
        isOffered={isOffered}
        onChosen={onChange}
      />
    );
  }
  return (
    <Group gap="sm">
      <span>
        {label}: {wordsOfProduct(chosen)}
      </span>
      <Button variant="subtle" onClick={() => onChange(undefined)}>
        {texts.products.chooseAnother}
      </Button>
    </Group>
  );
}
