import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Entries } from '../frame/entries.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { listTablets } from './access.requests.js';
import { EnrolTabletForm } from './enrol-tablet-form.js';
import { TabletEntry } from './tablet-entry.js';

/** The shared tablets of a studio. */
export function TabletsPage({ standing: { studioId, studioName } }: { standing: StandingView }) {
  const texts = useTexts();
  const { answer: tablets, problem, reload } = useAnswer(['tablets', studioId], () => listTablets(studioId));
  return (
    <Page above={studioName} title={texts.tablets.title} lead={texts.tablets.lead}>
      <Section title={texts.tablets.list} hint={texts.tablets.listHint}>
        <ProblemNote problem={problem} />
        {!tablets && !problem && <p role="status">{texts.app.loading}</p>}
        {tablets?.length === 0 && <p>{texts.tablets.none}</p>}
        {tablets && tablets.length > 0 && (
          <Entries label={texts.tablets.list}>
            {tablets.map((tablet) => (
              <TabletEntry key={tablet.id} studioId={studioId} tablet={tablet} onChanged={reload} />
            ))}
          </Entries>
        )}
      </Section>
      <Section title={texts.tablets.enrol} hint={texts.tablets.enrolHint}>
        <EnrolTabletForm studioId={studioId} />
      </Section>
    </Page>
  );
}
