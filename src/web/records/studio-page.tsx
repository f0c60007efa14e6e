import type { ReactNode } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useStudio } from '../service/studio-answers.js';
import { useTexts } from '../texts/texts.js';

/** A page whose days and times are those of the studio: its content waits until its time zone is known. */
export function StudioPage({
  standing: { studioId, studioName },
  title,
  lead,
  children,
}: {
  standing: StandingView;
  title: string;
  lead?: string;
  children: (timeZone: string) => ReactNode;
}) {
  const texts = useTexts();
  const studio = useStudio(studioId);
  const timeZone = studio.answer?.timeZone;
  return (
    <Page above={studioName} title={title} {...(lead !== undefined && { lead })}>
      <ProblemNote problem={studio.problem} />
      {timeZone === undefined && studio.problem === undefined && <p role="status">{texts.app.loading}</p>}
      {timeZone !== undefined && children(timeZone)}
    </Page>
  );
}
