import { useTexts } from '../../texts/texts.js';
import styles from '../numbers.module.css';
import type { FanDay } from './fan-geometry.js';

/** More rows than this are not read; whole weeks are. */
const mostRows = 60;
const levels = ['p5', 'p25', 'p50', 'p75', 'p95'] as const;

/** The numbers of a fan: each day, or each week where there are many. */
export function FanTable({
  label,
  days,
  written,
  writtenDay,
}: {
  label: string;
  days: readonly FanDay[];
  written: (amount: number) => string;
  writtenDay: (day: string) => string;
}) {
  const texts = useTexts();
  const words = texts.plans.fan;
  const step = days.length > mostRows ? 7 : 1;
  const rows = days.filter((_, index) => index % step === 0 || index === days.length - 1);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what can be moved sideways is moved by keys too.
    <section className={styles.scroll} aria-label={label} tabIndex={0}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">{words.day}</th>
            {levels.map((level) => (
              <th key={level} scope="col" className={styles.number}>
                {words.levels[level]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.day}>
              <th scope="row">{writtenDay(row.day)}</th>
              {levels.map((level) => (
                <td key={level} className={styles.number}>
                  {written(row[level])}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
