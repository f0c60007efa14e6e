import { Button, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { CompanyView } from '../../catalogue/companies.views.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { Fields } from '../frame/fields.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { RenameForm } from '../frame/rename-form.js';
import { Section } from '../frame/section.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { addCompany, type CompanyKind, listCompanies, renameCompany } from './catalogue.requests.js';

/** Whose name is on the label, and who sold it: two different things. */
export function CompaniesPage({ standing: { studioId, studioName } }: { standing: StandingView }) {
  const texts = useTexts();
  return (
    <Page above={studioName} title={texts.companies.title} lead={texts.companies.lead}>
      <Companies studioId={studioId} kind="maker" />
      <Companies studioId={studioId} kind="supplier" />
    </Page>
  );
}

function Companies({ studioId, kind }: { studioId: string; kind: CompanyKind }) {
  const texts = useTexts();
  const words = texts.companies[kind];
  const { answer, problem, reload } = useAnswer([kind, studioId], () => listCompanies(studioId, kind));
  const [name, setName] = useState('');
  const ids = useRef(new RequestIds()).current;
  const adding = useAction(async () => {
    await addCompany(studioId, kind, { id: ids.for({ name }), name: name.trim() });
    ids.renew();
    setName('');
    await reload();
  });
  const exists = adding.problem?.detailOf('already-exists');
  return (
    <Section title={words.many} hint={words.manyHint}>
      <ProblemNote problem={problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {answer?.length === 0 && <p>{words.none}</p>}
      {answer && answer.length > 0 && (
        <Entries label={words.many}>
          {answer.map((company) => (
            <CompanyEntry
              key={company.id}
              studioId={studioId}
              kind={kind}
              company={company}
              onChanged={reload}
            />
          ))}
        </Entries>
      )}
      <Fields onSubmit={() => void adding.run()} label={words.add}>
        <TextInput
          label={words.name}
          required
          maxLength={100}
          autoComplete="off"
          mt="lg"
          value={name}
          error={exists ?? adding.problem?.faultOf('name')}
          onChange={(event) => setName(event.currentTarget.value)}
        />
        <ProblemNote problem={exists === undefined ? adding.problem : undefined} />
        <div>
          <Button type="submit" loading={adding.busy}>
            {words.addSubmit}
          </Button>
        </div>
      </Fields>
    </Section>
  );
}

function CompanyEntry({
  studioId,
  kind,
  company,
  onChanged,
}: {
  studioId: string;
  kind: CompanyKind;
  company: CompanyView;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const [renaming, setRenaming] = useState(false);
  const ids = useRef(new RequestIds()).current;
  return (
    <Entry
      name={company.name}
      actions={
        !renaming && (
          <Button
            variant="default"
            aria-label={texts.companies.renameOf(company.name)}
            onClick={() => setRenaming(true)}
          >
            {texts.companies.rename}
          </Button>
        )
      }
      below={
        renaming && (
          <RenameForm
            title={texts.companies.renameOf(company.name)}
            label={texts.companies[kind].name}
            name={company.name}
            onCancel={() => setRenaming(false)}
            rename={async (name) => {
              const change = { version: company.version, name };
              await readAnewIfStale(
                () => renameCompany(studioId, kind, company.id, { id: ids.for(change), ...change }),
                onChanged,
              );
              await onChanged();
              setRenaming(false);
            }}
          />
        )
      }
    />
  );
}
