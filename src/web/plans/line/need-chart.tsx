import { useElementSize } from '@mantine/hooks';
import { useId } from 'react';
import type { ItemUnit } from '../../../reorder/item.js';
import type { DemandWeekView } from '../../../reorder/plan/plans.views.js';
import { useTexts } from '../../texts/texts.js';
import { roundSteps } from '../fan/fan-geometry.js';
import { drawnAmount, writtenNumber } from '../figures/written-units.js';
import styles from './need-chart.module.css';

const usualWidth = 640;
const height = 180;
const room = { left: 52, right: 14, top: 12, bottom: 30 };
const kinds = ['known', 'halfKnown', 'unforeseen'] as const;
const dayPixels = 96;

/** The need of each week, one part on the other. The table below it says the same in numbers. */
export function NeedChart({ weeks, unit }: { weeks: readonly DemandWeekView[]; unit: ItemUnit }) {
  const texts = useTexts();
  const words = texts.planLine;
  const id = useId();
  const { ref, width: measured } = useElementSize();
  if (weeks.length < 2) return null;
  const width = measured || usualWidth;
  const stacks = weeks.map(({ from, knownUnits, halfKnownUnits, unforeseenUnits }) => ({
    from,
    parts: [knownUnits, halfKnownUnits, unforeseenUnits].map((amount) => drawnAmount(amount, unit)),
  }));
  const down = height - room.top - room.bottom;
  const steps = roundSteps(Math.max(...stacks.map(({ parts }) => sum(parts))), Math.floor(down / 40));
  const highest = steps.at(-1) ?? 1;
  const yAt = (amount: number) => room.top + (1 - amount / highest) * down;
  const pitch = (width - room.left - room.right) / stacks.length;
  const every = Math.max(1, Math.ceil(dayPixels / pitch));
  const short = new Intl.DateTimeFormat(texts.language, { day: 'numeric', month: 'short', timeZone: 'UTC' });
  return (
    <figure className={styles.figure}>
      <div ref={ref}>
        <svg
          className={styles.chart}
          width={width}
          height={height}
          viewBox={`0 0 ${width} ${height}`}
          role="img"
          aria-labelledby={id}
        >
          <title id={id}>{words.needTitle(words.unitsOf[unit])}</title>
          {steps.map((amount) => (
            <g key={amount}>
              <path className={styles.grid} d={`M${room.left} ${yAt(amount)}H${width - room.right}`} />
              <text className={styles.amount} x={room.left - 8} y={yAt(amount) + 5}>
                {writtenNumber(amount, texts.language)}
              </text>
            </g>
          ))}
          {stacks.map(({ from, parts }, index) => (
            <g key={from}>
              {kinds.map((kind, part) => {
                const below = sum(parts.slice(0, part));
                const top = yAt(below + (parts[part] ?? 0));
                return (
                  <rect
                    key={kind}
                    className={styles.part}
                    data-kind={kind}
                    x={room.left + index * pitch + pitch * 0.15}
                    y={top}
                    width={pitch * 0.7}
                    height={Math.max(0, yAt(below) - top)}
                  />
                );
              })}
              {index % every === 0 && index <= stacks.length - every * 0.6 && (
                <text className={styles.day} x={room.left + index * pitch} y={height - 8}>
                  {short.format(new Date(`${from}T00:00:00Z`))}
                </text>
              )}
            </g>
          ))}
        </svg>
      </div>
      <figcaption>
        <ul className={styles.key}>
          {kinds.map((kind) => (
            <li key={kind}>
              <svg width="18" height="14" aria-hidden="true" focusable="false">
                <rect className={styles.part} data-kind={kind} x="1" y="1" width="16" height="12" />
              </svg>
              {words[kind]}
            </li>
          ))}
        </ul>
      </figcaption>
    </figure>
  );
}

function sum(amounts: readonly number[]): number {
  return amounts.reduce((total, amount) => total + amount, 0);
}
