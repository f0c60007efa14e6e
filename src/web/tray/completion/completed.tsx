import { Button } from '@mantine/core';
import { Link } from 'react-router';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { outcomes } from '../../../sessions/completion-rules.js';
import type { TrayLineView } from '../../../sessions/tray.views.js';
import { Note } from '../../frame/note.js';
import { areasOf, pathOf } from '../../frame/places.js';
import { Section } from '../../frame/section.js';
import { useTexts } from '../../texts/texts.js';
import styles from './completion.module.css';
import type { Besides } from './completion-draft.js';

/** What was booked, and where it can be read and printed. */
export function Completed({
  standing: { studioId, permissions },
  sessionId,
  lines,
  besides,
}: {
  standing: StandingView;
  sessionId: string;
  lines: readonly TrayLineView[];
  /** Known only to the page that completed the session. */
  besides: readonly Besides[];
}) {
  const texts = useTexts();
  const nameOf = ({ label, lotCode, labelCode }: TrayLineView) =>
    `${label}, ${texts.tray.lot(lotCode ?? labelCode)}`;
  return (
    <>
      <Note kind="good">
        <p>{texts.completion.done}</p>
      </Note>
      <Section title={texts.completion.booked} hint={texts.completion.bookedHint}>
        {outcomes.map((outcome) => {
          const counted = counts(lines.filter(({ settledAs }) => settledAs === outcome).map(nameOf));
          if (counted.length === 0) return null;
          return (
            <div key={outcome} className={styles.booked}>
              <p>{texts.completion.outcomes[outcome]}</p>
              <ul>
                {counted.map(([name, count]) => (
                  <li key={name}>{texts.tray.gap(count, name)}</li>
                ))}
              </ul>
            </div>
          );
        })}
        {besides.length > 0 && (
          <div className={styles.booked}>
            <p>{texts.completion.besides}</p>
            <ul>
              {besides.map(({ containerId, label, isCounted, amount }) => (
                <li key={containerId}>{texts.tray.gap(isCounted ? amount : 1, label)}</li>
              ))}
            </ul>
          </div>
        )}
        <div className={styles.ways}>
          {areasOf(permissions).includes('records') && (
            <Button
              component={Link}
              to={pathOf({ studioId, area: 'records' }, 'sessions', sessionId)}
              size="xl"
              variant="default"
            >
              {texts.completion.toRecord}
            </Button>
          )}
          <Button component={Link} to={pathOf({ studioId, area: 'today' })} size="xl">
            {texts.completion.toToday}
          </Button>
        </div>
      </Section>
    </>
  );
}

/** Equal names once, with how often they come. */
function counts(names: readonly string[]): [string, number][] {
  const counted = new Map<string, number>();
  for (const name of names) counted.set(name, (counted.get(name) ?? 0) + 1);
  return [...counted];
}
