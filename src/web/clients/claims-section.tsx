import { Button, Textarea } from '@mantine/core';
import { useRef, useState } from 'react';
import type { LegalClaimView } from '../../clients/legal-claims.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { Fields } from '../frame/fields.js';
import { ProblemNote } from '../frame/problem-note.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { Section } from '../frame/section.js';
import { writtenAtStudio } from '../records/written-at-studio.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { endClaim, listClaims, noteClaim } from './clients.requests.js';

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
  return (
    <Section title={texts.client.claims} hint={texts.client.claimsHint}>
      <ProblemNote problem={claims.problem} />
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
          label={texts.client.claim}
          hint={texts.client.claimHint}
          name={texts.client.claimSubmit}
          onSaved={async (id, reason) => {
            await noteClaim(studioId, clientId, { id, reason });
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
  const at = (instant: string) => writtenAtStudio(instant, texts.language, timeZone);
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
            label={texts.client.endReason}
            hint={texts.client.claimHint}
            name={texts.client.endClaim}
            onSaved={async (id, reason) => {
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

function ReasonForm({
  label,
  hint,
  name,
  onSaved,
  onCancel,
}: {
  label: string;
  hint: string;
  name: string;
  onSaved: (id: string, reason: string) => Promise<void>;
  onCancel: () => void;
}) {
  const [reason, setReason] = useState('');
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const told = reason.trim();
    await onSaved(ids.for({ told }), told);
  });
  return (
    <Fields onSubmit={() => void run()} label={name}>
      <Textarea
        label={label}
        description={hint}
        size="lg"
        required
        withAsterisk={false}
        autosize
        minRows={2}
        maxLength={500}
        value={reason}
        error={problem?.faultOf('reason')}
        onChange={(event) => setReason(event.currentTarget.value)}
      />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
    </Fields>
  );
}
