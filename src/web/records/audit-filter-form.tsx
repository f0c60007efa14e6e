import { Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { PersonView } from '../../identity/people.views.js';
import { Choice } from '../frame/choice.js';
import { useTexts } from '../texts/texts.js';
import styles from './filters.module.css';
import type { AuditFilters } from './records.requests.js';
import { dayAfter, startOfStudioDay } from './studio-time.js';

const orders = ['newest', 'oldest'] as const;

/** By what the log can be narrowed: action, thing, person and days of the studio. */
export function AuditFilterForm({
  people,
  timeZone,
  onShow,
}: {
  people: readonly PersonView[];
  timeZone: string;
  onShow: (filters: AuditFilters) => void;
}) {
  const texts = useTexts();
  const [draft, setDraft] = useState({
    action: '',
    subjectKind: '',
    subjectId: '',
    personId: '',
    from: '',
    to: '',
    order: 'newest' as (typeof orders)[number],
  });
  const set = (changed: Partial<typeof draft>) => setDraft({ ...draft, ...changed });
  const given = (text: string) => (text.trim() === '' ? undefined : text.trim());
  const show = () =>
    onShow({
      order: draft.order,
      action: given(draft.action),
      subjectKind: given(draft.subjectKind),
      subjectId: given(draft.subjectId),
      personId: given(draft.personId),
      from: draft.from === '' ? undefined : startOfStudioDay(draft.from, timeZone),
      to: draft.to === '' ? undefined : startOfStudioDay(dayAfter(draft.to), timeZone),
    });
  const text = (name: 'action' | 'subjectKind' | 'subjectId', label: string, most: number, hint?: string) => (
    <TextInput
      label={label}
      {...(hint !== undefined && { description: hint })}
      autoComplete="off"
      autoCapitalize="none"
      spellCheck={false}
      maxLength={most}
      value={draft[name]}
      onChange={(event) => set({ [name]: event.currentTarget.value })}
    />
  );
  return (
    <form
      className={styles.filters}
      aria-label={texts.auditLog.filters}
      onSubmit={(event) => {
        event.preventDefault();
        show();
      }}
    >
      {text('action', texts.auditLog.action, 100, texts.auditLog.actionHint)}
      {text('subjectKind', texts.auditLog.subjectKind, 100, texts.auditLog.subjectKindHint)}
      {text('subjectId', texts.auditLog.subjectId, 300)}
      <Choice
        label={texts.auditLog.person}
        value={draft.personId}
        none={texts.auditLog.anyone}
        choices={people.map(({ id, name }) => ({ value: id, label: name ?? texts.records.unknownPerson }))}
        onChange={(personId) => set({ personId })}
      />
      <TextInput
        type="date"
        label={texts.auditLog.from}
        value={draft.from}
        onChange={(event) => set({ from: event.currentTarget.value })}
      />
      <TextInput
        type="date"
        label={texts.auditLog.to}
        value={draft.to}
        onChange={(event) => set({ to: event.currentTarget.value })}
      />
      <Choice
        label={texts.auditLog.order}
        value={draft.order}
        choices={orders.map((order) => ({ value: order, label: texts.auditLog.orders[order] }))}
        onChange={(order) => set({ order: order === '' ? 'newest' : order })}
      />
      <Button type="submit" variant="default">
        {texts.auditLog.show}
      </Button>
    </form>
  );
}
