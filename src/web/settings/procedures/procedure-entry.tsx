import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { ProcedureView } from '../../../sessions/procedures.views.js';
import { Entry } from '../../frame/entries.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { useEdits } from '../../frame/use-edits.js';
import { readAnewIfStale } from '../../service/read-anew-if-stale.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { ChangeForm } from '../change-form.js';
import { changeProcedure } from '../settings.requests.js';
import { KitListPart } from './kit-list-part.js';
import { contentOf, draftOf, type ProcedureDraft } from './procedure-draft.js';
import { ProcedureFields } from './procedure-fields.js';

/** One procedure, with what can be changed of it and its kit list. */
export function ProcedureEntry({
  studioId,
  procedure,
  mayChange,
  reload,
}: {
  studioId: string;
  procedure: ProcedureView;
  mayChange: boolean;
  reload: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.procedures;
  const [open, setOpen] = useState<'change' | 'kit list'>();
  const { id: procedureId, name, version, archivedAt } = procedure;
  const edits = useEdits<ProcedureDraft>(draftOf(procedure));
  const ids = useRef(new RequestIds()).current;
  const offering = useAction(async () => {
    const change = { version, archived: archivedAt === null };
    await readAnewIfStale(
      () => changeProcedure(studioId, procedureId, { id: ids.for(change), ...change }),
      reload,
    );
    await reload();
  });
  const toggle = (part: 'change' | 'kit list') => setOpen(open === part ? undefined : part);
  return (
    <Entry
      name={name}
      mark={archivedAt === null ? undefined : words.archived}
      isOver={archivedAt !== null}
      actions={
        <>
          <Button
            variant="default"
            aria-label={words.kitListOf(name)}
            aria-expanded={open === 'kit list'}
            onClick={() => toggle('kit list')}
          >
            {words.kitList}
          </Button>
          {mayChange && (
            <>
              <Button
                variant="default"
                aria-label={words.changeOf(name)}
                aria-expanded={open === 'change'}
                onClick={() => toggle('change')}
              >
                {words.change}
              </Button>
              <Button
                variant="default"
                loading={offering.busy}
                aria-label={archivedAt === null ? words.archiveOf(name) : words.offerOf(name)}
                onClick={() => void offering.run()}
              >
                {archivedAt === null ? words.archive : words.offer}
              </Button>
            </>
          )}
        </>
      }
      below={
        <>
          <ProblemNote problem={offering.problem} />
          {open === 'change' && (
            <ChangeForm
              label={words.changeOf(name)}
              edits={edits}
              version={version}
              save={(id) =>
                changeProcedure(studioId, procedureId, { id, version, ...contentOf(edits.changes) })
              }
              reload={reload}
            >
              {(problem) => <ProcedureFields edits={edits} problem={problem} />}
            </ChangeForm>
          )}
          {open === 'kit list' && (
            <KitListPart studioId={studioId} procedure={procedure} mayChange={mayChange} />
          )}
        </>
      }
    >
      <p>
        {words.facts(
          texts.records.bodyPlaces[procedure.bodyPlace],
          procedure.touchUpFromDays,
          procedure.touchUpToDays,
        )}
      </p>
    </Entry>
  );
}
