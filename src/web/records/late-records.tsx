import { Button, Group } from '@mantine/core';
import { useState } from 'react';
import type { PersonView } from '../../identity/people.views.js';
import type { SessionView } from '../../sessions/session-record.views.js';
import { Note } from '../frame/note.js';
import { Section } from '../frame/section.js';
import { useTexts } from '../texts/texts.js';
import { AddUseForm } from './add-use-form.js';
import { ComplicationsForm } from './complications-form.js';
import { HealedResultForm } from './healed-result-form.js';
import { ReverseUses } from './reverse-uses.js';

type OpenForm = 'use' | 'reversal' | 'complications' | 'healed';

/** What is put right or added after a session was completed: each by a form of its own. */
export function LateRecords({
  studioId,
  session,
  timeZone,
  people,
  onRecorded,
}: {
  studioId: string;
  session: SessionView;
  timeZone: string;
  people: readonly PersonView[];
  onRecorded: () => Promise<void>;
}) {
  const texts = useTexts();
  const [open, setOpen] = useState<OpenForm>();
  const [remarks, setRemarks] = useState<string[]>([]);
  const form = {
    studioId,
    session,
    timeZone,
    onCancel: () => setOpen(undefined),
    onRecorded: async (said: string[] = []) => {
      await onRecorded();
      setRemarks(said);
      setOpen(undefined);
    },
  };
  const start = (which: OpenForm) => {
    setRemarks([]);
    setOpen(which);
  };
  return (
    <Section title={texts.late.section} hint={texts.late.sectionHint}>
      {remarks.length > 0 && (
        <Note kind="good">
          {remarks.map((remark) => (
            <p key={remark}>{remark}</p>
          ))}
        </Note>
      )}
      {open === undefined && (
        <Group gap="sm" mt={remarks.length > 0 ? 'md' : 0}>
          <Button variant="default" onClick={() => start('use')}>
            {texts.late.addUse}
          </Button>
          {session.uses.some((use) => use.reversal === null) && (
            <Button variant="default" onClick={() => start('reversal')}>
              {texts.late.reverseUse}
            </Button>
          )}
          <Button variant="default" onClick={() => start('complications')}>
            {texts.late.addComplications}
          </Button>
          <Button variant="default" onClick={() => start('healed')}>
            {session.healedResult === null ? texts.late.recordHealed : texts.late.correctHealed}
          </Button>
        </Group>
      )}
      {open === 'reversal' && (
        <ReverseUses
          studioId={studioId}
          session={session}
          onReversed={onRecorded}
          onDone={() => setOpen(undefined)}
        />
      )}
      {open === 'use' && <AddUseForm {...form} people={people} />}
      {open === 'complications' && <ComplicationsForm {...form} onStale={onRecorded} />}
      {open === 'healed' && <HealedResultForm {...form} onStale={onRecorded} />}
    </Section>
  );
}
