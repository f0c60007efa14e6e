import type { ConfigurationView } from '../../../catalogue/configurations.views.js';
import type { KitItemView } from '../../../sessions/kit-lists.views.js';
import { useTexts } from '../../texts/texts.js';
import { wordsOfItem } from './kit-item.js';

/** A kit list to be read. */
export function KitListLines({
  items,
  pools,
}: {
  items: readonly KitItemView[];
  pools: readonly ConfigurationView[];
}) {
  const texts = useTexts();
  if (items.length === 0) return <p>{texts.procedures.emptyList}</p>;
  return (
    <ul>
      {items.map((item) => (
        <li key={item.productId ?? item.configuration}>
          {texts.procedures.line(item.quantity, wordsOfItem(item, pools, texts))}
        </li>
      ))}
    </ul>
  );
}
