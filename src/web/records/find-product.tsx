import { Button, Group, Space, TextInput } from '@mantine/core';
import { useState } from 'react';
import { Entries, Entry } from '../frame/entries.js';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { findProducts } from './records.requests.js';

export interface FoundProduct {
  id: string;
  /** Maker, name and shade. */
  label: string;
  stockForm: 'container' | 'pieces';
  kind: 'pigment' | 'cartridge' | 'consumable';
}

/** Finds a product of the register by words of its name. */
export function FindProduct({
  studioId,
  onChosen,
  onCancel,
}: {
  studioId: string;
  onChosen: (product: FoundProduct) => void;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const [text, setText] = useState('');
  const [found, setFound] = useState<{ products: FoundProduct[]; isMore: boolean }>();
  const { run, busy, problem } = useAction(async () => {
    const { items, next } = await findProducts(studioId, text.trim());
    setFound({
      products: items.map(({ id, makerName, name, shade, stockForm, kind }) => ({
        id,
        label: [makerName, name, shade].filter(Boolean).join(' '),
        stockForm,
        kind,
      })),
      isMore: next !== null,
    });
  });
  return (
    <>
      <Fields onSubmit={() => void run()} label={texts.late.addUse}>
        <TextInput
          label={texts.late.findProduct}
          description={texts.late.addUseHint}
          required
          autoFocus
          autoComplete="off"
          maxLength={100}
          value={text}
          error={problem?.faultOf('text')}
          onChange={(event) => setText(event.currentTarget.value)}
        />
        <ProblemNote problem={problem} />
        <Group gap="sm">
          <Button type="submit" loading={busy}>
            {texts.late.find}
          </Button>
          <Button variant="default" onClick={onCancel}>
            {texts.app.cancel}
          </Button>
        </Group>
      </Fields>
      <Space h="lg" />
      {found?.products.length === 0 && (
        <Note kind="plain">
          <p>{texts.late.noProduct}</p>
        </Note>
      )}
      {found !== undefined && found.products.length > 0 && (
        <Entries label={texts.late.product}>
          {found.products.map((product) => (
            <Entry
              key={product.id}
              name={product.label}
              actions={
                <Button
                  variant="default"
                  aria-label={texts.late.chooseOf(product.label)}
                  onClick={() => onChosen(product)}
                >
                  {texts.late.choose}
                </Button>
              }
            />
          ))}
        </Entries>
      )}
      {found?.isMore && <p>{texts.late.more}</p>}
    </>
  );
}
