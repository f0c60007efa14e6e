import type { ReactNode } from 'react';
import { productLabel } from '../../catalogue/product-label.js';
import type { MixView } from '../../sessions/mixes.views.js';
import type { BlendedPigmentView, UseView } from '../../sessions/session-record.views.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import type { Texts } from '../texts/en/english.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay, writtenInstant } from '../texts/written-dates.js';
import { amountOf } from './amount-of.js';
import styles from './use-table.module.css';

/** What touched the client, a row each, with everything that has to be said of it below. */
export function UseTable({
  studioId,
  label,
  uses,
  ...known
}: {
  studioId: string;
  label: string;
  uses: readonly UseView[];
} & KnownOfSession) {
  const texts = useTexts();
  if (uses.length === 0) return null;
  return (
    <table className={styles.uses} aria-label={label}>
      <thead>
        <tr>
          <th scope="col">{texts.session.product}</th>
          <th scope="col">{texts.session.lot}</th>
          <th scope="col">{texts.session.useBy}</th>
          <th scope="col">{texts.session.known}</th>
          <th scope="col">{texts.session.amount}</th>
        </tr>
      </thead>
      {uses.map((use) => (
        <UseRows key={use.id} studioId={studioId} use={use} {...known} />
      ))}
    </table>
  );
}

interface KnownOfSession {
  timeZone: string;
  mixes: readonly MixView[];
  blends: readonly BlendedPigmentView[];
  /** When the session itself was recorded. */
  firstRecordedAt: string | null;
  nameOf: (personId: string | null) => string;
}

function UseRows({ studioId, use, ...known }: { studioId: string; use: UseView } & KnownOfSession) {
  const texts = useTexts();
  const remarks = remarksOf(use, known, texts);
  const cell = (name: string, content: ReactNode) => (
    <td>
      <span className={styles.name}>{name}</span>
      <span>{content}</span>
    </td>
  );
  return (
    <tbody data-reversed={use.reversal !== null || undefined}>
      <tr>
        {cell(texts.session.product, productLabel(use))}
        {cell(
          texts.session.lot,
          <PageLink to={pathOf({ studioId, area: 'stock' }, 'lots', use.lotId)} className={styles.lot ?? ''}>
            {use.lotCode ?? texts.session.noLotCode}
          </PageLink>,
        )}
        {cell(
          texts.session.useBy,
          use.useBy === null ? texts.session.noUseBy : writtenDay(use.useBy, texts.language),
        )}
        {cell(texts.session.known, texts.session.knownBy[use.knownBy])}
        {cell(texts.session.amount, amountOf(use, known.mixes, texts))}
      </tr>
      {remarks.length > 0 && (
        <tr className={styles.remarks}>
          <td colSpan={5}>
            {remarks.map((remark) => (
              <p key={remark}>{remark}</p>
            ))}
          </td>
        </tr>
      )}
    </tbody>
  );
}

function remarksOf(
  use: UseView,
  { timeZone, blends, firstRecordedAt, nameOf }: Omit<KnownOfSession, 'mixes'>,
  texts: Texts,
): string[] {
  const at = (instant: string) => writtenInstant(instant, texts.language, timeZone);
  const blended = blends.find(({ useId }) => useId === use.id)?.lots ?? [];
  const anaesthetic = [
    use.appliedAt !== null && texts.session.applied(at(use.appliedAt)),
    use.removedAt !== null && texts.session.removed(at(use.removedAt)),
    use.appliedBy !== null && texts.session.appliedBy(nameOf(use.appliedBy)),
  ].filter((part) => part !== false);
  return [
    blended.length > 0 &&
      `${texts.session.blendOf} ${blended
        .map((lot) =>
          texts.session.blendLot(
            productLabel(lot),
            lot.lotCode ?? texts.session.noLotCode,
            lot.useBy === null ? texts.session.noUseBy : writtenDay(lot.useBy, texts.language),
          ),
        )
        .join('; ')}.`,
    anaesthetic.length > 0 && `${anaesthetic.join(', ')}.`,
    use.againstRefusal !== null &&
      use.againstRefusal.length > 0 &&
      texts.session.against(
        use.againstRefusal.map((reason) => texts.records.refusals[reason] ?? reason).join(', '),
      ),
    use.reason !== null && texts.session.because(use.reason),
    firstRecordedAt !== null &&
      use.recordedAt > firstRecordedAt &&
      texts.session.addedLater(at(use.recordedAt), nameOf(use.personId)),
    use.reversal !== null &&
      [
        texts.session.reversedAt(at(use.reversal.recordedAt), nameOf(use.reversal.personId)),
        use.reversal.reason !== null && texts.session.because(use.reversal.reason),
      ]
        .filter((part) => part !== false)
        .join(' '),
  ].filter((remark) => remark !== false);
}
