import { Button, Checkbox } from '@mantine/core';
import { type ReactNode, useState } from 'react';
import { Entries, Entry } from '../frame/entries.js';
import { useTexts } from '../texts/texts.js';
import styles from './taking-in.module.css';

interface JudgedRow {
  row: number;
  faults: readonly { column: string | null; message: string }[];
  warnings: readonly string[];
}

const shownAtOnce = 50;

/** What would become of each row, with every fault of every row; those with faults alone, where there are some. */
export function JudgedRows<Row extends JudgedRow>({
  rows,
  nameOf,
  markOf,
  factsOf,
}: {
  rows: readonly Row[];
  nameOf: (row: Row) => string;
  markOf: (row: Row) => string | undefined;
  factsOf: (row: Row) => ReactNode;
}) {
  const words = useTexts().takingIn;
  const faulty = rows.filter(({ faults }) => faults.length > 0);
  const told = rows.filter(({ faults, warnings }) => faults.length > 0 || warnings.length > 0);
  const [only, setOnly] = useState(faulty.length > 0);
  const [most, setMost] = useState(shownAtOnce);
  const wanted = only ? (faulty.length > 0 ? faulty : told) : rows;
  return (
    <>
      {told.length > 0 && told.length < rows.length && (
        <Checkbox
          className={styles.only ?? ''}
          label={faulty.length > 0 ? words.onlyFaulty(faulty.length) : words.onlyTold(told.length)}
          checked={only}
          onChange={(event) => setOnly(event.currentTarget.checked)}
        />
      )}
      <Entries label={words.rows}>
        {wanted.slice(0, most).map((row, index) => (
          <Entry
            // biome-ignore lint/suspicious/noArrayIndexKey: several rows may come from one entry of a calendar.
            key={index}
            name={
              <>
                <span className={styles.number}>{words.row(row.row)}</span> {nameOf(row)}
              </>
            }
            mark={row.faults.length > 0 ? words.faulty : markOf(row)}
            below={
              (row.faults.length > 0 || row.warnings.length > 0) && (
                <ul className={styles.faults} lang="en">
                  {row.faults.map(({ column, message }) => (
                    <li key={`${column} ${message}`} data-kind="fault">
                      {column !== null && <b>{column}: </b>}
                      {message}.
                    </li>
                  ))}
                  {row.warnings.map((warning) => (
                    <li key={warning}>{warning}</li>
                  ))}
                </ul>
              )
            }
          >
            {factsOf(row)}
          </Entry>
        ))}
      </Entries>
      {wanted.length > most && (
        <Button mt="md" variant="default" onClick={() => setMost(most + shownAtOnce)}>
          {words.more(wanted.length - most)}
        </Button>
      )}
    </>
  );
}
