import { productLabel } from '../../catalogue/product-label.js';
import type { MixView } from '../../sessions/mixes.views.js';
import { useTexts } from '../texts/texts.js';
import styles from './session-sheet.module.css';

/** What was dropped into each cup. */
export function MixList({ mixes }: { mixes: readonly MixView[] }) {
  const texts = useTexts();
  const microlitres = (amount: number) => amount.toLocaleString(texts.language);
  return (
    <ul className={styles.lines} aria-label={texts.session.mixes}>
      {mixes.map((mix) => (
        <li key={mix.id}>
          <strong>{mix.label}</strong>:{' '}
          {mix.parts
            .map((part) => {
              const amount =
                part.drops === null
                  ? texts.session.microlitres(microlitres(part.microlitres))
                  : texts.session.drops(part.drops);
              const product = productLabel(part);
              return `${amount} ${product} (${texts.session.lot} ${part.lotCode ?? texts.session.noLotCode})`;
            })
            .join('; ')}
          ; {texts.session.mixTotal(microlitres(mix.microlitres))}
        </li>
      ))}
    </ul>
  );
}
