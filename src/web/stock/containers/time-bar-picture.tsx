import { useId } from 'react';
import { localDay } from '../../../identity/local-day.js';
import type { ContainerView } from '../../../stock/container-list.views.js';
import { hasEnded } from '../../../stock/container-transitions.js';
import type { Texts } from '../../texts/en/english.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import type { StudioFacts } from '../use-studio-facts.js';
import { containerCondition } from './container-condition.js';
import { type Stretch, type TimeMark, type TimeMarkKind, timeBar } from './time-bar.js';
import styles from './time-bar-picture.module.css';

type Pictured = Pick<ContainerView, 'receivedAt' | 'openedAt' | 'useBy' | 'life' | 'state' | 'holds'>;

/** The signs of the marks, around 0, 0; each has a form of its own. */
const signs: Record<TimeMarkKind, string> = {
  received: 'M-1.500-7H1.500V7H-1.500z',
  opened: 'M0-7a7 7 0 1 1 0 14a7 7 0 1 1 0-14z',
  today: 'M-8-17H8L2-8V18H-2V-8z',
  'opened life': 'M0-10L10 0L0 10L-10 0z',
  'use-by': 'M-7-9H7V9H-7z',
};

/** Points at what lies too far away to be drawn to scale. */
const beyond = 'M-8-9L2 0L-8 9M0-9L10 0L0 9';

/**
 * The time of one container as a line: when it came, was opened and has to be used up, and where today stands. The words
 * beside it say the same.
 */
export function TimeBarPicture({
  container,
  facts: { timeZone, today, near },
}: {
  container: Pictured;
  facts: StudioFacts;
}) {
  const texts = useTexts();
  const bar = barOf(container, timeZone, today);
  const { standing } = containerCondition(container, near);
  return (
    <figure className={styles.figure}>
      <BarLine bar={bar} standing={standing} />
      <figcaption>
        <ul className={styles.marks}>
          {bar.marks.map((mark) => (
            <li key={mark.kind}>
              <svg width="22" height="22" viewBox="-18 -18 36 36" aria-hidden="true" focusable="false">
                <MarkSign mark={mark} />
              </svg>
              <span>{words(mark, texts)}</span>
            </li>
          ))}
        </ul>
      </figcaption>
    </figure>
  );
}

/** The same line alone, for a list: what it says stands in the words beside it. */
export function SmallTimeBar({
  container,
  facts: { timeZone, today, near },
}: {
  container: Pictured;
  facts: StudioFacts;
}) {
  if (hasEnded(container.state)) return null;
  const { standing } = containerCondition(container, near);
  return (
    <div className={styles.small}>
      <BarLine bar={barOf(container, timeZone, today)} standing={standing} />
    </div>
  );
}

function BarLine({ bar, standing }: { bar: ReturnType<typeof timeBar>; standing: string }) {
  // What React makes may hold signs that an address inside a picture may not.
  const id = useId().replace(/\W/g, '');
  const left = bar.left && across(bar.left, 14);
  const over = bar.over && across(bar.over, 14);
  return (
    <svg className={styles.bar} height="44" aria-hidden="true" focusable="false">
      <defs>
        <pattern
          id={`hatching-${id}`}
          width="8"
          height="8"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width="3.500" height="8" className={styles.hatch} />
        </pattern>
        <pattern id={`stripes-${id}`} width="10" height="44" patternUnits="userSpaceOnUse">
          <rect width="7" height="44" className={styles.stripe} />
        </pattern>
      </defs>
      <rect x="0" y="21" width="100%" height="2" className={styles.track} />
      {bar.gone && <rect {...across(bar.gone, 6)} className={styles.gone} />}
      {left && <rect {...left} className={styles.left} data-standing={standing} />}
      {left && standing === 'care' && <rect {...left} fill={`url(#stripes-${id})`} />}
      {left && standing === 'fault' && <rect {...left} fill={`url(#hatching-${id})`} />}
      {over && <rect {...over} className={styles.over} />}
      {over && <rect {...over} fill={`url(#hatching-${id})`} />}
      {bar.marks.map((mark) => (
        <svg key={mark.kind} x={`${inset(mark.at)}%`} y="22" overflow="visible" aria-hidden="true">
          <MarkSign mark={mark} />
        </svg>
      ))}
    </svg>
  );
}

function MarkSign({ mark: { kind, isBeyond } }: { mark: TimeMark }) {
  return isBeyond ? (
    <path d={beyond} className={styles.beyond} />
  ) : (
    <path d={signs[kind]} className={styles.sign} data-kind={kind} />
  );
}

function across({ from, to }: Stretch, height: number) {
  return {
    x: `${inset(from)}%`,
    width: `${inset(to) - inset(from)}%`,
    y: 22 - height / 2,
    height,
  };
}

/** Signs at either end are not cut off. */
function inset(at: number): number {
  return 2 + at * 96;
}

function barOf(container: Pictured, timeZone: string, today: string) {
  const { receivedAt, openedAt, useBy, life } = container;
  return timeBar({
    receivedOn: localDay(receivedAt, timeZone),
    openedOn: openedAt === null ? null : localDay(openedAt, timeZone),
    openedLifeLastDay: life.openedLifeLastDay,
    useBy,
    today,
  });
}

function words({ kind, day }: TimeMark, texts: Texts): string {
  return texts.container.marks[kind](writtenDay(day, texts.language));
}
