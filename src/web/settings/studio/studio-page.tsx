import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Page } from '../../frame/page.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { useStudio } from '../../service/studio-answers.js';
import { useTexts } from '../../texts/texts.js';
import { AddStudioSection } from './add-studio-section.js';
import { GeneralSection } from './general-section.js';
import { RetentionSection } from './retention-section.js';
import { RulesSection } from './rules-section.js';
import { StudioFacts } from './studio-facts.js';

/** What a studio is called, by which clock and rules it works; who may not change it, reads it. */
export function StudioPage({ standing: { studioId, studioName, permissions } }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.studioSettings;
  const { answer: studio, problem, reload } = useStudio(studioId);
  const mayChange = permissions.includes('change the studio');
  return (
    <Page above={studioName} title={words.title} lead={mayChange ? words.lead : words.leadReadOnly}>
      <ProblemNote problem={problem} />
      {!studio && !problem && <p role="status">{texts.app.loading}</p>}
      {studio && !mayChange && <StudioFacts studio={studio} />}
      {studio && mayChange && (
        <>
          <GeneralSection studio={studio} reload={reload} />
          <RulesSection studio={studio} reload={reload} />
          <RetentionSection studio={studio} reload={reload} />
        </>
      )}
      {permissions.includes('add studios') && <AddStudioSection studioId={studioId} />}
    </Page>
  );
}
