import type { TraceUseView } from '../../../sessions/trace.views.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import type { Texts } from '../../texts/en/english.js';
import { useTexts } from '../../texts/texts.js';
import { nameOf, writtenVolume } from '../amounts.js';
import styles from './trace-table.module.css';

/** Every use of a trace, a row each; what was taken back stays among them. */
export function TraceTable({ studioId, uses }: { studioId: string; uses: readonly TraceUseView[] }) {
  const texts = useTexts();
  const at = useStudioInstants(studioId);
  const { columns } = texts.trace;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what can be moved sideways is moved by keys too.
    <section className={styles.scroll} aria-label={texts.trace.uses} tabIndex={0}>
      <table className={styles.table}>
        <thead>
          <tr>
            {[columns.session, columns.client, columns.lot, columns.through, columns.amount].map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {uses.map((use) => (
            <tr key={use.id} data-use={use.id}>
              <th scope="row">
                <PageLink alone to={pathOf({ studioId, area: 'records' }, 'sessions', use.sessionId)}>
                  {at(use.occurredAt)}
                </PageLink>
                <div className={styles.more}>{use.procedureName}</div>
              </th>
              <td className={styles.reference}>{use.clientReference}</td>
              <td>
                <PageLink alone to={pathOf({ studioId, area: 'stock' }, 'lots', use.lotId)}>
                  {use.lotCode ?? texts.lot.withoutCode}
                </PageLink>
                <div className={styles.more}>{nameOf(use)}</div>
              </td>
              <td>{throughOf(use, texts)}</td>
              <td>{amountOf(use, texts)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function throughOf({ through, knownBy, reversedAt, againstRefusal }: TraceUseView, texts: Texts): string {
  const by = through.map((one) => texts.trace.throughs[one]);
  return [
    by.length === 0 ? texts.trace.directly : by.join(', '),
    texts.knownBy[knownBy],
    againstRefusal !== null && texts.trace.againstRefusal,
    reversedAt !== null && texts.trace.reversed,
  ]
    .filter((one) => one !== false)
    .join('; ');
}

function amountOf({ pieces, microlitres }: TraceUseView, texts: Texts): string {
  if (microlitres > 0) return writtenVolume(microlitres, texts.language);
  return pieces > 0 ? texts.trace.pieces(pieces) : texts.trace.noAmount;
}
