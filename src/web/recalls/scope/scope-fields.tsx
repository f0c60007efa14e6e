import { Button } from '@mantine/core';
import type { MatchedLotView } from '../../../recalls/recalls.views.js';
import { useTexts } from '../../texts/texts.js';
import { suggestedProducts } from '../matches/suggested-products.js';
import styles from './scope.module.css';
import { emptyItem, type ItemDraft } from './scope-draft.js';
import { ScopeItemFields } from './scope-item.js';

/** What is recalled, product by product, as it is being settled. */
export function ScopeFields({
  studioId,
  items,
  met,
  onChanged,
  onShow,
}: {
  studioId: string;
  items: readonly ItemDraft[];
  /** The lots that they meet here, as far as that is known. */
  met: readonly MatchedLotView[];
  onChanged: (items: ItemDraft[]) => void;
  /** Shows the words that something was read from; left out: there is no text. */
  onShow?: ((part: number) => void) | undefined;
}) {
  const texts = useTexts();
  return (
    <div className={styles.items}>
      {items.map((item, index) => (
        <ScopeItemFields
          key={item.key}
          studioId={studioId}
          item={item}
          number={index + 1}
          suggested={suggestedProducts(met, index)}
          onChanged={(changed) => onChanged(items.map((one) => (one.key === item.key ? changed : one)))}
          onRemoved={
            items.length > 1 ? () => onChanged(items.filter((one) => one.key !== item.key)) : undefined
          }
          onShow={onShow}
        />
      ))}
      <div>
        <Button variant="default" onClick={() => onChanged([...items, emptyItem()])}>
          {texts.scope.addProduct}
        </Button>
      </div>
    </div>
  );
}
