import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Entries } from '../../frame/entries.js';
import { Page } from '../../frame/page.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { listProcedures } from '../settings.requests.js';
import { AddProcedureForm } from './add-procedure-form.js';
import { ProcedureEntry } from './procedure-entry.js';

/** What the studio offers, when each is touched up and what it needs on the tray. */
export function ProceduresPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.procedures;
  const { studioId, studioName, permissions } = standing;
  const { answer, problem, reload } = useAnswer(['procedures', 'also archived', studioId], () =>
    listProcedures(studioId),
  );
  const mayChange = permissions.includes('change procedures');
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.list} hint={words.listHint}>
        <ProblemNote problem={problem} />
        {!answer && !problem && <p role="status">{texts.app.loading}</p>}
        {answer?.length === 0 && <p>{words.none}</p>}
        {answer && answer.length > 0 && (
          <Entries label={words.list}>
            {answer.map((procedure) => (
              <ProcedureEntry
                key={procedure.id}
                studioId={studioId}
                procedure={procedure}
                mayChange={mayChange}
                reload={reload}
              />
            ))}
          </Entries>
        )}
      </Section>
      {mayChange && (
        <Section title={words.add} hint={words.addHint}>
          <AddProcedureForm studioId={studioId} onAdded={reload} />
        </Section>
      )}
    </Page>
  );
}
