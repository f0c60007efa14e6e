import { Radio, Stack, TextInput } from '@mantine/core';
import { type Role, roles } from '../../identity/permissions.js';
import type { ServiceProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';

export interface PersonDraft {
  name: string;
  role: Role;
  /** Empty: no end. */
  until: string;
}

/** Who somebody is here: name, role and last day. */
export function PersonFields({
  draft,
  onChange,
  problem,
}: {
  draft: PersonDraft;
  onChange: (draft: PersonDraft) => void;
  problem: ServiceProblem | undefined;
}) {
  const texts = useTexts();
  return (
    <>
      <TextInput
        label={texts.people.name}
        required
        maxLength={100}
        autoComplete="off"
        value={draft.name}
        error={problem?.faultOf('name')}
        onChange={(event) => onChange({ ...draft, name: event.currentTarget.value })}
      />
      <Radio.Group
        label={texts.people.role}
        value={draft.role}
        error={problem?.faultOf('role')}
        onChange={(role) => onChange({ ...draft, role: role as Role })}
      >
        <Stack gap="sm" mt="xs">
          {roles.map((role) => (
            <Radio key={role} value={role} label={texts.roles[role]} description={texts.roleHints[role]} />
          ))}
        </Stack>
      </Radio.Group>
      <TextInput
        type="date"
        label={texts.people.lastDay}
        description={texts.people.lastDayHint}
        required={draft.role === 'auditor'}
        value={draft.until}
        error={problem?.faultOf('until')}
        onChange={(event) => onChange({ ...draft, until: event.currentTarget.value })}
      />
    </>
  );
}
