import { Button, Checkbox, TextInput } from '@mantine/core';
import { Note } from '../../frame/note.js';
import { useTexts } from '../../texts/texts.js';
import type { SuggestedProduct } from '../matches/suggested-products.js';
import { ChosenProducts } from './chosen-products.js';
import { LotTerms } from './lot-terms.js';
import styles from './scope.module.css';
import type { ItemDraft } from './scope-draft.js';

const longest = 300;

/** One product of a scope: what it is called, and which of its lots are meant. */
export function ScopeItemFields({
  studioId,
  item,
  number,
  suggested,
  onChanged,
  onRemoved,
  onShow,
}: {
  studioId: string;
  item: ItemDraft;
  /** From 1, as it is counted on the page. */
  number: number;
  /** Products of the register that it may mean. */
  suggested: readonly SuggestedProduct[];
  onChanged: (item: ItemDraft) => void;
  /** Left out: it is the only one. */
  onRemoved?: (() => void) | undefined;
  onShow?: ((part: number) => void) | undefined;
}) {
  const texts = useTexts();
  const words = texts.scope;
  const set = (change: Partial<ItemDraft>) => onChanged({ ...item, ...change });
  const named = (field: 'makerName' | 'productName' | 'shade' | 'gtins', label: string, hint?: string) => (
    <TextInput
      label={label}
      description={hint}
      maxLength={longest}
      autoComplete="off"
      spellCheck={false}
      value={item[field]}
      onChange={(event) => set({ [field]: event.currentTarget.value })}
    />
  );
  return (
    <fieldset className={styles.item}>
      <legend>{words.product(number)}</legend>
      <div className={styles.pair}>
        {named('makerName', words.maker)}
        {named('productName', words.name)}
      </div>
      <div className={styles.pair}>
        {named('shade', words.shade, words.shadeHint)}
        {named('gtins', words.gtins, words.gtinsHint)}
      </div>
      <ChosenProducts
        studioId={studioId}
        productIds={item.productIds}
        suggested={suggested}
        onChanged={(productIds) => set({ productIds })}
      />
      <LotTerms lots={item.lots} onChanged={(lots) => set({ lots })} onShow={onShow} />
      <Checkbox
        label={words.openEnded}
        description={words.openEndedHint}
        checked={item.openEnded}
        onChange={(event) => set({ openEnded: event.currentTarget.checked })}
      />
      {item.wasOpenEnded && !item.openEnded && (
        <Note kind="plain">
          <p>{words.narrowed}</p>
        </Note>
      )}
      {onRemoved && (
        <div>
          <Button variant="default" onClick={onRemoved}>
            {words.removeProduct}
          </Button>
        </div>
      )}
    </fieldset>
  );
}
