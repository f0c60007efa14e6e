import { Button } from '@mantine/core';
import { useState } from 'react';
import { localDay } from '../../identity/local-day.js';
import type { SessionListItemView } from '../../sessions/sessions.views.js';
import type { MixAtTouchUpView } from '../../sessions/touch-up.views.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useStudio } from '../service/studio-answers.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import type { LaidThing } from './laid-things.js';
import styles from './last-visit.module.css';
import { LastVisitPart } from './last-visit-part.js';
import { type PartToRepeat, partToRepeat } from './part-to-repeat.js';
import { showLastVisit } from './tray.requests.js';
import type { Dropped } from './use-mixes.js';

/** What was mixed for this client the last time, each mix to be repeated at one touch. */
export function LastVisit({
  studioId,
  session,
  things,
  works,
  onRepeat,
}: {
  studioId: string;
  session: SessionListItemView;
  things: readonly LaidThing[];
  works: boolean;
  onRepeat: (label: string, parts: Dropped[]) => void;
}) {
  const texts = useTexts();
  const studio = useStudio(studioId);
  const visit = useAnswer(['last visit', studioId, session.id], () => showLastVisit(studioId, session));
  if (visit.problem && visit.answer === undefined) return <ProblemNote problem={visit.problem} />;
  if (visit.answer === undefined || !studio.answer) return <p role="status">{texts.app.loading}</p>;
  if (visit.answer === null) return <p>{texts.lastVisit.none}</p>;
  const { completedOn, visitKind, procedureName, mixes } = visit.answer;
  const today = localDay(new Date().toISOString(), studio.answer.timeZone);
  return (
    <div className={styles.visit}>
      <p>
        {texts.lastVisit.was(
          texts.visitKinds[visitKind],
          procedureName,
          writtenDay(completedOn, texts.language),
        )}
      </p>
      {mixes.length === 0 && <p>{texts.lastVisit.noMix}</p>}
      {mixes.map((mix) => (
        <EarlierMix
          key={mix.id}
          studioId={studioId}
          mix={mix}
          parts={mix.parts.map((part) => partToRepeat(part, things, today))}
          works={works}
          onRepeat={onRepeat}
        />
      ))}
    </div>
  );
}

function EarlierMix({
  studioId,
  mix,
  parts,
  works,
  onRepeat,
}: {
  studioId: string;
  mix: MixAtTouchUpView;
  parts: readonly PartToRepeat[];
  works: boolean;
  onRepeat: (label: string, parts: Dropped[]) => void;
}) {
  const texts = useTexts();
  // A second touch of the same button, a moment later, is no second cup.
  const [repeated, setRepeated] = useState(false);
  const dropped = parts.flatMap(({ from, part }): Dropped[] => {
    if (!from) return [];
    const { containerId } = from;
    return [
      part.drops === null
        ? { containerId, microlitres: part.microlitres }
        : { containerId, drops: part.drops },
    ];
  });
  const leftOut = parts.length - dropped.length;
  return (
    <section className={styles.mix} aria-label={texts.lastVisit.mix(mix.label)}>
      <h3>{texts.lastVisit.mix(mix.label)}</h3>
      <ul className={styles.parts}>
        {parts.map((part) => (
          <LastVisitPart key={part.part.containerId} studioId={studioId} toRepeat={part} />
        ))}
      </ul>
      {works && (
        <div>
          <Button
            size="xl"
            disabled={dropped.length === 0 || repeated}
            onClick={() => {
              if (repeated) return;
              setRepeated(true);
              onRepeat(mix.label, dropped);
            }}
          >
            {repeated ? texts.lastVisit.repeated : texts.lastVisit.repeat(leftOut)}
          </Button>
        </div>
      )}
    </section>
  );
}
