import type { ReactNode } from 'react';
import styles from './numbers.module.css';

/** Said in so many words, since browsers forget it where rows stand below each other. */
const as = (role: string) => ({ role });

export interface NumbersRow {
  key: string;
  name: ReactNode;
  /** One for each column after the first. */
  cells: readonly ReactNode[];
  /** The one that counts. */
  isMain?: boolean;
}

/** Figures beside each other; on a phone, where there is more than one column of them, below each other. */
export function NumbersTable({
  label,
  first,
  columns,
  rows,
}: {
  label: string;
  /** What stands above the names of the rows. */
  first: string;
  columns: readonly string[];
  rows: readonly NumbersRow[];
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what can be moved sideways is moved by keys too.
    <section className={styles.scroll} aria-label={label} tabIndex={0}>
      <table
        {...as('table')}
        className={styles.table}
        aria-label={label}
        data-stacks={columns.length > 1 || undefined}
      >
        <thead {...as('rowgroup')}>
          <tr {...as('row')}>
            <th {...as('columnheader')} scope="col">
              {first}
            </th>
            {columns.map((name) => (
              <th key={name} {...as('columnheader')} scope="col" className={styles.number}>
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody {...as('rowgroup')}>
          {rows.map(({ key, name, cells, isMain = false }) => (
            <tr key={key} {...as('row')} data-main={isMain || undefined}>
              <th {...as('rowheader')} scope="row">
                {name}
              </th>
              {columns.map((column, index) => (
                <td key={column} {...as('cell')} className={styles.number} data-name={column}>
                  {cells[index]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
