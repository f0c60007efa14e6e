import { Button } from '@mantine/core';
import type { ReactNode } from 'react';
import { Note } from '../frame/note.js';
import { useTexts } from '../texts/texts.js';
import styles from './taking-in.module.css';

/** What a preview comes to: what would be made, or what stands in the way; and the way in. */
export function Judgement({
  preview,
  made,
  changed,
  nothingNew,
  busy,
  onTakeIn,
}: {
  preview: {
    usable: boolean;
    counts: { rows: number; faultyRows: number };
    faults: readonly { row: number | null; message: string }[];
    warnings?: readonly string[];
  };
  /** In words. */
  made: ReactNode;
  /** Whether it was looked over before and found good. */
  changed: boolean;
  /** Whether there is nothing in it that could be taken in. */
  nothingNew: boolean;
  busy: boolean;
  onTakeIn: () => void;
}) {
  const words = useTexts().takingIn;
  const { usable, counts, faults, warnings = [] } = preview;
  return (
    <div className={styles.judgement}>
      {changed && (
        <Note kind="fault">
          <p>{words.changed}</p>
        </Note>
      )}
      {faults.length > 0 && (
        <Note kind="fault">
          <p>{words.unreadable}</p>
          <ul lang="en">
            {faults.map(({ row, message }) => (
              <li key={`${row} ${message}`}>
                {row !== null && <b>{words.row(row)} </b>}
                {message}
              </li>
            ))}
          </ul>
        </Note>
      )}
      {counts.faultyRows > 0 && (
        <Note kind="fault">
          <p>{words.someFaulty(counts.faultyRows, counts.rows)}</p>
        </Note>
      )}
      {warnings.map((warning) => (
        <Note key={warning} kind="plain">
          <p lang="en">{warning}</p>
        </Note>
      ))}
      {usable && (
        <>
          <Note kind={nothingNew ? 'plain' : 'good'}>
            <p>{nothingNew ? words.nothingNew : words.noFaults(counts.rows)}</p>
            {!nothingNew && <p>{made}</p>}
          </Note>
          {!nothingNew && (
            <div>
              <Button onClick={onTakeIn} loading={busy}>
                {words.takeIn}
              </Button>
            </div>
          )}
          {busy && (
            <p role="status" className={styles.hint}>
              {words.takingIn}
            </p>
          )}
        </>
      )}
    </div>
  );
}
