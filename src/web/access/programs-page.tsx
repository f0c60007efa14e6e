import { useState } from 'react';
import type { MadeApiTokenView } from '../../identity/sign-in/api-tokens.views.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Entries } from '../frame/entries.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { ShownOnce } from '../frame/shown-once.js';
import { usePeople } from '../service/studio-answers.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstantHere } from '../texts/written-dates.js';
import { listTokens } from './access.requests.js';
import { MakeTokenForm } from './make-token-form.js';
import { TokenEntry } from './token-entry.js';

/** The tokens by which programs act in a studio. */
export function ProgramsPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const { studioId, studioName, personId, permissions } = standing;
  const { answer: tokens, problem, reload } = useAnswer(['tokens', studioId], () => listTokens(studioId));
  const { answer: people = [] } = usePeople(studioId);
  const [made, setMade] = useState<MadeApiTokenView & { name: string }>();
  const nameOf = (id: string) => people.find((person) => person.id === id)?.name ?? texts.people.noName;
  return (
    <Page above={studioName} title={texts.programs.title} lead={texts.programs.lead}>
      {made && (
        <ShownOnce
          key={made.id}
          title={texts.programs.madeTitle(made.name)}
          label={texts.programs.madeLabel}
          value={made.token}
          onDone={() => setMade(undefined)}
        >
          <p>{texts.programs.madeDetail(writtenInstantHere(made.expiresAt, texts.language))}</p>
          <code>Authorization: Bearer …</code>
        </ShownOnce>
      )}
      <Section title={texts.programs.list} hint={texts.programs.listHint}>
        <ProblemNote problem={problem} />
        {!tokens && !problem && <p role="status">{texts.app.loading}</p>}
        {tokens?.length === 0 && <p>{texts.programs.none}</p>}
        {tokens && tokens.length > 0 && (
          <Entries label={texts.programs.list}>
            {tokens.map((token) => (
              <TokenEntry
                key={token.id}
                studioId={studioId}
                token={token}
                actsAs={token.personId === personId ? undefined : nameOf(token.personId)}
                onRevoked={reload}
              />
            ))}
          </Entries>
        )}
      </Section>
      <Section title={texts.programs.make} hint={texts.programs.makeHint}>
        <MakeTokenForm
          studioId={studioId}
          mine={permissions}
          onMade={async (token) => {
            setMade(token);
            await reload();
          }}
        />
      </Section>
    </Page>
  );
}
