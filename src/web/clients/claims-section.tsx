import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { LegalClaimView } from '../../clients/legal-claims.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { ProblemNote } from '../frame/problem-note.js';
import { ReasonForm } from '../frame/reason-form.js';
import { Section } from '../frame/section.js';
import { RequestIds } from '../service/request-ids.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstant } from '../texts/written-dates.js';
import { endClaim, listClaims, noteClaim } from './clients.requests.js';

const longestReason = 500;

/** Legal claims for which the record is needed: while one stands, nobody erases it. */
export function ClaimsSection({
  studioId,
  clientId,
  timeZone,
  isErased,
}: {
  studioId: string;
  clientId: string;
  timeZone: string;
  isErased: boolean;
}) {
  const texts = useTexts();
  const claims = useAnswer(['legal claims', studioId, clientId], () => listClaims(studioId, clientId));
  const [noting, setNoting] = useState(false);
  const ids = useRef(new RequestIds()).current;
  return (
    <Section title={texts.client.claims} hint={texts.client.claimsHint}>
      <ProblemNote problem={claims.problem} />
      {!claims.answer && !claims.problem && <p role="status">{texts.app.loading}</p>}
      {claims.answer?.length === 0 && <p>{texts.client.noClaims}</p>}
      {claims.answer !== undefined && claims.answer.length > 0 && (
        <Entries label={texts.client.claims}>
          {claims.answer.map((claim) => (
            <ClaimEntry
              key={claim.id}
              studioId={studioId}
              clientId={clientId}
              claim={claim}
              timeZone={timeZone}
              onEnded={claims.reload}
            />
          ))}
        </Entries>
      )}
      {noting && (
        <ReasonForm
          title={texts.client.claimSubmit}
          label={texts.client.claim}
          hint={texts.client.claimHint}
          longest={longestReason}
          save={async (reason) => {
            await noteClaim(studioId, clientId, { id: ids.for({ reason }), reason });
            ids.renew();
            await claims.reload();
            setNoting(false);
          }}
          onCancel={() => setNoting(false)}
        />
      )}
      {!noting && !isErased && (
        <Button mt="md" variant="default" onClick={() => setNoting(true)}>
          {texts.client.claimSubmit}
        </Button>
      )}
    </Section>
  );
}

function ClaimEntry({
  studioId,
  clientId,
  claim,
  timeZone,
  onEnded,
}: {
  studioId: string;
  clientId: string;
  claim: LegalClaimView;
  timeZone: string;
  onEnded: () => Promise<void>;
}) {
  const texts = useTexts();
  const [ending, setEnding] = useState(false);
  const ids = useRef(new RequestIds()).current;
  const at = (instant: string) => writtenInstant(instant, texts.language, timeZone);
  const stands = claim.endedAt === null;
  return (
    <Entry
      name={claim.reason ?? texts.client.claimReasonNotShown}
      mark={stands ? texts.client.claimStands : texts.client.claimEnded}
      actions={
        stands &&
        !ending && (
          <Button variant="default" onClick={() => setEnding(true)}>
            {texts.client.endClaim}
          </Button>
        )
      }
      below={
        ending && (
          <ReasonForm
            title={texts.client.endClaim}
            label={texts.client.endReason}
            hint={texts.client.claimHint}
            longest={longestReason}
            save={async (reason) => {
              const id = ids.for({ ended: claim.id, reason });
              await endClaim(studioId, clientId, claim.id, { id, reason });
              await onEnded();
              setEnding(false);
            }}
            onCancel={() => setEnding(false)}
          />
        )
      }
    >
      <p>{texts.client.claimNoted(at(claim.recordedAt))}</p>
      {claim.endedAt !== null && (
        <p>{[texts.client.claimEndedAt(at(claim.endedAt)), claim.endedBecause].filter(Boolean).join(' ')}</p>
      )}
    </Entry>
  );
}
