import { useState } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PagedEntries } from '../frame/paged-entries.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { usePeople } from '../service/studio-answers.js';
import { usePages } from '../service/use-pages.js';
import { useTexts } from '../texts/texts.js';
import { AuditEntry } from './audit-entry.js';
import { AuditFilterForm } from './audit-filter-form.js';
import { type AuditFilters, listAuditEntries } from './records.requests.js';
import { StudioPage } from './studio-page.js';
import { ExportSection, VerificationSection } from './verification-section.js';

/** Who did what and when, whether it is whole, and a copy to take away. */
export function AuditLogPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const { studioId } = standing;
  return (
    <StudioPage standing={standing} title={texts.auditLog.title} lead={texts.auditLog.lead}>
      {(timeZone) => (
        <>
          <VerificationSection studioId={studioId} />
          <ExportSection studioId={studioId} timeZone={timeZone} />
          <AuditEntries studioId={studioId} timeZone={timeZone} />
        </>
      )}
    </StudioPage>
  );
}

function AuditEntries({ studioId, timeZone }: { studioId: string; timeZone: string }) {
  const texts = useTexts();
  const [filters, setFilters] = useState<AuditFilters>({ order: 'newest' });
  const people = usePeople(studioId);
  const list = usePages(['audit log', studioId, JSON.stringify(filters)], (after) =>
    listAuditEntries(studioId, filters, after),
  );
  const nameOf = (id: string | null) =>
    id === null
      ? texts.auditLog.service
      : (people.answer?.find((person) => person.id === id)?.name ?? texts.records.unknownPerson);
  return (
    <Section title={texts.auditLog.entries}>
      <AuditFilterForm people={people.answer ?? []} timeZone={timeZone} onShow={setFilters} />
      <ProblemNote problem={people.problem} />
      <PagedEntries
        label={texts.auditLog.entries}
        list={list}
        none={list.hasMore ? texts.auditLog.noneYet : texts.auditLog.none}
        entry={(entry) => (
          <AuditEntry key={entry.sequence} entry={entry} timeZone={timeZone} nameOf={nameOf} />
        )}
      />
    </Section>
  );
}
