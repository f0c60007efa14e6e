import { useElementSize } from '@mantine/hooks';
import { useId } from 'react';
import { useTexts } from '../../texts/texts.js';
import numbers from '../numbers.module.css';
import styles from './fan-chart.module.css';
import { type FanDay, fanGeometry } from './fan-geometry.js';
import { FanTable } from './fan-table.js';

export type FanMarkKind = 'arrival' | 'expiry' | 'order' | 'short';

/** Something that happens on a day of the fan. */
export interface FanMark {
  day: string;
  kind: FanMarkKind;
  /** What it is, with its day. */
  words: string;
}

/** The signs of the marks, around 0, 0; each has a form of its own. */
const signs: Record<FanMarkKind, string> = {
  arrival: 'M-7-6H7L0 7z',
  expiry: 'M-6-6H6V6H-6z',
  order: 'M0-7a7 7 0 1 1 0 14a7 7 0 1 1 0-14z',
  short: 'M0-8L8 0L0 8L-8 0z',
};

/** Until the page has said how wide it is. */
const usualWidth = 640;
const height = 280;
const room = { left: 52, right: 14, top: 22, bottom: 30 };

/**
 * What may be here on each day to come: half of all courses lie in the narrow band, nine of ten in the wide one. The table
 * below it says the same in numbers.
 */
export function FanChart({
  title,
  description,
  days,
  marks,
  written,
}: {
  title: string;
  /** What it shows, in a sentence. */
  description: string;
  days: readonly FanDay[];
  marks: readonly FanMark[];
  /** An amount as it is written, with or without its unit. */
  written: { axis(amount: number): string; table(amount: number): string };
}) {
  const texts = useTexts();
  const words = texts.plans.fan;
  const id = useId();
  const { ref, width } = useElementSize();
  if (days.length < 2) return <p>{words.none}</p>;
  const size = { width: width || usualWidth, height, ...room };
  const fan = fanGeometry(days, size);
  const shown = marks.flatMap((mark) => {
    const x = fan.xOf(mark.day);
    return x === undefined ? [] : [{ ...mark, x }];
  });
  const short = new Intl.DateTimeFormat(texts.language, { day: 'numeric', month: 'short', timeZone: 'UTC' });
  return (
    <figure className={styles.figure}>
      <div ref={ref}>
        <svg
          className={styles.chart}
          width={size.width}
          height={height}
          viewBox={`0 0 ${size.width} ${height}`}
          role="img"
          aria-labelledby={`${id}-title`}
          aria-describedby={`${id}-description`}
        >
          <title id={`${id}-title`}>{title}</title>
          <desc id={`${id}-description`}>{description}</desc>
          {fan.amounts.map(({ y, amount }) => (
            <g key={amount}>
              <path className={styles.grid} d={`M${room.left} ${y}H${size.width - room.right}`} />
              <text className={styles.amount} x={room.left - 8} y={y + 5}>
                {written.axis(amount)}
              </text>
            </g>
          ))}
          <path className={styles.wide} d={fan.wide} />
          <path className={styles.narrow} d={fan.narrow} />
          <path className={styles.zero} d={`M${room.left} ${fan.zeroY}H${size.width - room.right}`} />
          <path className={styles.median} d={fan.median} />
          {shown.map(({ kind, x, words: name }) => (
            <g key={`${kind} ${name}`} className={styles.mark} data-kind={kind}>
              <path className={styles.stem} d={`M${x} ${room.top - 6}V${fan.zeroY}`} />
              <path
                className={styles.sign}
                d={signs[kind]}
                transform={`translate(${x} ${kind === 'short' ? fan.zeroY : room.top - 10})`}
              />
            </g>
          ))}
          {fan.days.map(({ x, day }) => (
            <text
              key={day}
              className={styles.day}
              x={x}
              y={height - 8}
              data-place={x < room.left + 20 ? 'first' : x > size.width - 40 ? 'last' : undefined}
            >
              {short.format(new Date(`${day}T00:00:00Z`))}
            </text>
          ))}
        </svg>
      </div>
      <figcaption>
        <ul className={styles.key}>
          <li>
            <svg width="22" height="14" aria-hidden="true" focusable="false">
              <path className={styles.median} d="M0 7H22" />
            </svg>
            {words.median}
          </li>
          <li>
            <svg width="22" height="14" aria-hidden="true" focusable="false">
              <path className={styles.narrow} d="M1 1H21V13H1z" />
            </svg>
            {words.narrow}
          </li>
          <li>
            <svg width="22" height="14" aria-hidden="true" focusable="false">
              <path className={styles.wide} d="M1 1H21V13H1z" />
            </svg>
            {words.wide}
          </li>
          {shown.map(({ kind, words: name }) => (
            <li key={`${kind} ${name}`} className={styles.mark} data-kind={kind}>
              <svg width="22" height="20" viewBox="-11 -10 22 20" aria-hidden="true" focusable="false">
                <path className={styles.sign} d={signs[kind]} />
              </svg>
              {name}
            </li>
          ))}
        </ul>
        <details className={numbers.details}>
          <summary>{words.asTable}</summary>
          <FanTable label={title} days={days} written={written.table} />
        </details>
      </figcaption>
    </figure>
  );
}
