import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import { localDay } from '../../identity/local-day.js';
import type { VerificationView } from '../../operations/verify/verification.views.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { RequestIds } from '../service/request-ids.js';
import { saveFile } from '../service/save-file.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import styles from './audit-entry.module.css';
import { exportAuditLog, verifyRecord } from './records.requests.js';

/** Whether the record is whole; asked for by a press, since it takes its time. */
export function VerificationSection({ studioId }: { studioId: string }) {
  const texts = useTexts();
  const [found, setFound] = useState<VerificationView>();
  const { run, busy, problem } = useAction(async () => {
    setFound(undefined);
    setFound(await verifyRecord(studioId));
  });
  return (
    <Section title={texts.auditLog.verification} hint={texts.auditLog.verificationHint}>
      <ProblemNote problem={problem} />
      {found && <Answer found={found} />}
      <Button mt={found ? 'md' : 0} variant="default" loading={busy} onClick={() => void run()}>
        {texts.auditLog.verify}
      </Button>
    </Section>
  );
}

function Answer({ found }: { found: VerificationView }) {
  const texts = useTexts();
  const number = (count: number) => count.toLocaleString(texts.language);
  const { wrong, findings, entries, rows, registerRows, balances, heads, head } = found;
  return (
    <Note kind={wrong === 0 ? 'good' : 'fault'}>
      <p>
        <strong>{wrong === 0 ? texts.auditLog.whole : texts.auditLog.broken(wrong)}</strong>
      </p>
      {findings.length > 0 && (
        <ul>
          {findings.map(({ check, table, id, message }) => (
            <li key={`${check} ${table} ${id} ${message}`}>
              {[table, id].filter((part) => part !== null).join(' ')} {message}
            </li>
          ))}
        </ul>
      )}
      <p>{texts.auditLog.counted(number(entries), number(rows + registerRows), number(balances))}</p>
      <p>{heads === 0 ? texts.auditLog.noHeads : texts.auditLog.heads(heads)}</p>
      {head !== null && (
        <div className={styles.details}>
          <p>{texts.auditLog.head(number(head.sequence))}</p>
          <code>{head.hash}</code>
          <p>{texts.auditLog.keepHead}</p>
        </div>
      )}
    </Note>
  );
}

/** The whole log as a file. */
export function ExportSection({ studioId, timeZone }: { studioId: string; timeZone: string }) {
  const texts = useTexts();
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const file = await exportAuditLog(studioId, ids.for({ studioId }));
    ids.renew();
    saveFile(file, `audit-log-${localDay(new Date().toISOString(), timeZone)}.ndjson`);
  });
  return (
    <Section title={texts.auditLog.export} hint={texts.auditLog.exportHint}>
      <ProblemNote problem={problem} />
      <Button variant="default" loading={busy} onClick={() => void run()}>
        {texts.auditLog.exportSubmit}
      </Button>
    </Section>
  );
}
