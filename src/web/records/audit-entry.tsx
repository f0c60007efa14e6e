import type { AuditEntryView } from '../../operations/audit-log/audit-log.views.js';
import { Entry } from '../frame/entries.js';
import { Facts } from '../frame/facts.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstant } from '../texts/written-dates.js';
import styles from './audit-entry.module.css';

/** One entry of the log; all of what it says is read when it is opened. */
export function AuditEntry({
  entry,
  timeZone,
  nameOf,
}: {
  entry: AuditEntryView;
  timeZone: string;
  nameOf: (personId: string | null) => string;
}) {
  const texts = useTexts();
  const { sequence, action, subjectKind, subjectId, personId, via, recordedAt, rows, notes } = entry;
  const stateOf = ({ digest, before }: AuditEntryView['rows'][number]) => {
    if (digest === null) return texts.auditLog.removed;
    return before === undefined ? texts.auditLog.made : texts.auditLog.changed;
  };
  return (
    <Entry
      name={action}
      mark={String(sequence)}
      below={
        <details className={styles.details}>
          <summary aria-label={`${texts.auditLog.payload}: ${texts.auditLog.entry(String(sequence))}`}>
            {texts.auditLog.payload}
          </summary>
          <Facts
            facts={[
              [texts.auditLog.subject, `${subjectKind} ${subjectId}`],
              ...Object.entries(notes).map(([name, value]) => [name, written(value)] as const),
              [texts.auditLog.hash, <code key="hash">{entry.hash}</code>],
              [texts.auditLog.previousHash, <code key="previous">{entry.previousHash}</code>],
            ]}
          />
          {rows.length === 0 ? (
            <p>{texts.auditLog.noRows}</p>
          ) : (
            <>
              <p>{texts.auditLog.rows}</p>
              <ul className={styles.rows}>
                {rows.map((row) => (
                  <li key={`${row.table} ${row.id}`}>
                    {`${row.table} ${row.id}, ${stateOf(row)}`}
                    {row.digest !== null && <code>{row.digest}</code>}
                  </li>
                ))}
              </ul>
            </>
          )}
        </details>
      }
    >
      <p>
        {texts.auditLog.by(nameOf(personId), via)}, {writtenInstant(recordedAt, texts.language, timeZone)}
      </p>
    </Entry>
  );
}

/** A note of an entry as text: words as they are, everything else as JSON. */
function written(value: unknown): string {
  return typeof value === 'string' ? value : JSON.stringify(value, null, 1);
}
