import { Button, Group, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import { Choice } from '../frame/choice.js';
import { ProblemNote } from '../frame/problem-note.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import styles from './catalogue.module.css';
import { addCompany, type CompanyKind, listCompanies } from './catalogue.requests.js';

/** A maker or supplier, chosen of those that are known; who may change the register can add one in passing. */
export function CompanyField({
  studioId,
  kind,
  value,
  mayAdd,
  none,
  error,
  onChange,
}: {
  studioId: string;
  kind: CompanyKind;
  /** Empty: none is chosen. */
  value: string;
  mayAdd: boolean;
  /** What it is called when none is chosen; left out: one has to be. */
  none?: string;
  error?: string | undefined;
  onChange: (companyId: string) => void;
}) {
  const texts = useTexts();
  const words = texts.companies[kind];
  const { answer, problem, reload } = useAnswer([kind, studioId], () => listCompanies(studioId, kind));
  const [name, setName] = useState<string>();
  const ids = useRef(new RequestIds()).current;
  const adding = useAction(async () => {
    if (name === undefined || name.trim() === '') return;
    const { id } = await addCompany(studioId, kind, { id: ids.for({ name }), name: name.trim() });
    ids.renew();
    await reload();
    setName(undefined);
    onChange(id);
  });
  const exists = adding.problem?.detailOf('already-exists');
  return (
    <div className={styles.company}>
      <ProblemNote problem={problem} />
      <Choice
        label={words.one}
        description={words.hint}
        value={value}
        required={none === undefined}
        none={none ?? texts.companies.choose}
        choices={(answer ?? []).map((company) => ({ value: company.id, label: company.name }))}
        error={error}
        onChange={onChange}
      />
      {mayAdd && name === undefined && (
        <div>
          <Button variant="subtle" onClick={() => setName('')}>
            {words.add}
          </Button>
        </div>
      )}
      {name !== undefined && (
        // Not a form of its own: it stands in one.
        <div className={styles.inset}>
          <TextInput
            label={words.name}
            autoFocus
            maxLength={100}
            autoComplete="off"
            value={name}
            error={exists ?? adding.problem?.faultOf('name')}
            onChange={(event) => setName(event.currentTarget.value)}
            onKeyDown={(event) => {
              if (event.key !== 'Enter') return;
              event.preventDefault();
              void adding.run();
            }}
          />
          <ProblemNote problem={exists === undefined ? adding.problem : undefined} />
          <Group gap="sm">
            <Button loading={adding.busy} onClick={() => void adding.run()}>
              {words.addSubmit}
            </Button>
            <Button variant="default" onClick={() => setName(undefined)}>
              {texts.app.cancel}
            </Button>
          </Group>
        </div>
      )}
    </div>
  );
}
