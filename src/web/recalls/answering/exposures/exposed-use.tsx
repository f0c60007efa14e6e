import type { ConcernedLotView, ExposedUseView } from '../../../../recalls/exposures/exposures.views.js';
import { nameOf, writtenVolume } from '../../../stock/amounts.js';
import type { Texts } from '../../../texts/en/english.js';
import { useTexts } from '../../../texts/texts.js';
import styles from './exposures.module.css';

/** One use: what it was recorded as, how its lot was known, and the lots of the recall in it. */
export function ExposedUse({ use }: { use: ExposedUseView }) {
  const texts = useTexts();
  const words = texts.recallExposures;
  return (
    <div className={styles.use}>
      <p>
        {[
          `${nameOf(use)}, ${use.lotCode === null ? words.noCode : words.lot(use.lotCode)}`,
          amountOf(use, texts),
          texts.knownBy[use.knownBy],
          ...use.through.map((way) => words.through[way]),
        ].join(', ')}
      </p>
      {use.lots.flatMap((lot) => {
        const said = saidOf(lot, texts);
        return said === undefined ? [] : [<p key={`${lot.lotId} ${lot.as}`}>{said}</p>];
      })}
      {use.againstRefusal !== null && <p>{words.againstRefusal}</p>}
    </div>
  );
}

function amountOf({ pieces, drops, microlitres, amountKnown }: ExposedUseView, texts: Texts): string {
  if (!amountKnown) return texts.recallExposures.unknownAmount;
  if (microlitres === 0) return texts.amounts.pieces(pieces);
  const volume = writtenVolume(microlitres, texts.language);
  return drops === null
    ? texts.recallExposures.about(volume)
    : texts.amounts.about(texts.session.drops(drops), volume);
}

/** Undefined: the use was recorded as that lot itself, which is said already. */
function saidOf(lot: ConcernedLotView, texts: Texts): string | undefined {
  const words = texts.recallExposures;
  const name = `${nameOf(lot)}, ${lot.lotCode === null ? words.noCode : words.lot(lot.lotCode)}`;
  switch (lot.as) {
    case 'itself':
      return undefined;
    case 'another open lot that day':
      return words.openThatDay(name);
    case 'house blend':
      return lot.shareMicrolitres === null
        ? words.inBlend(name)
        : words.shareInBlend(name, writtenVolume(lot.shareMicrolitres, texts.language));
  }
}
