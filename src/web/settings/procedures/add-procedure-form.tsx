import { Button } from '@mantine/core';
import { useRef } from 'react';
import { Fields } from '../../frame/fields.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { useEdits } from '../../frame/use-edits.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { addProcedure } from '../settings.requests.js';
import { contentOf, newProcedure, type ProcedureDraft } from './procedure-draft.js';
import { ProcedureFields } from './procedure-fields.js';

export function AddProcedureForm({ studioId, onAdded }: { studioId: string; onAdded: () => Promise<void> }) {
  const texts = useTexts();
  const edits = useEdits<ProcedureDraft>(newProcedure);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const { name, bodyPlace } = edits.draft;
    const content = { ...contentOf(edits.draft), name, bodyPlace };
    await addProcedure(studioId, { id: ids.for(content), ...content });
    ids.renew();
    edits.forget();
    await onAdded();
  });
  return (
    <Fields onSubmit={() => void run()} label={texts.procedures.add}>
      <ProcedureFields edits={edits} problem={problem} />
      <ProblemNote problem={problem?.code === 'already-exists' ? undefined : problem} />
      <div>
        <Button type="submit" loading={busy}>
          {texts.procedures.addSubmit}
        </Button>
      </div>
    </Fields>
  );
}
