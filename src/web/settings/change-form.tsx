import { Button, Group } from '@mantine/core';
import { type ReactNode, useRef, useState } from 'react';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import type { Edits } from '../frame/use-edits.js';
import { isProblem, type ServiceProblem } from '../service/problem.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { ProblemOrSignInAgain } from '../sign-in/sign-in-again.js';
import { useTexts } from '../texts/texts.js';

/**
 * A form that changes what others may change too. Where somebody was faster it says so and shows what they made of it;
 * what was written here stays, and is saved when it is asked for again.
 */
export function ChangeForm<Draft extends object>({
  label,
  edits,
  version,
  save,
  reload,
  onClose,
  standsAtFields = () => false,
  children,
}: {
  label: string;
  edits: Edits<Draft>;
  /** What is changed was read at this version. */
  version: number;
  save: (id: string) => Promise<unknown>;
  /** Reads it anew. */
  reload: () => Promise<void>;
  /** It was saved, or is not to be. Left out: the form stays. */
  onClose?: () => void;
  /** Whether all that is wrong stands at its fields, so that it is not said once more. */
  standsAtFields?: (problem: ServiceProblem | undefined) => boolean;
  children: (problem: ServiceProblem | undefined) => ReactNode;
}) {
  const texts = useTexts();
  const ids = useRef(new RequestIds()).current;
  const [saved, setSaved] = useState(false);
  const { run, busy, problem } = useAction(async () => {
    setSaved(false);
    await readAnewIfStale(() => save(ids.for({ version, ...edits.changes })), reload);
    ids.renew();
    await reload();
    edits.forget();
    setSaved(true);
    onClose?.();
  });
  const isStale = problem !== undefined && isProblem(problem, 'stale-version');
  return (
    <Fields onSubmit={() => void run()} label={label}>
      {children(problem)}
      {isStale ? (
        <Note kind="fault">
          <p>{texts.settings.stale}</p>
        </Note>
      ) : (
        <ProblemOrSignInAgain problem={standsAtFields(problem) ? undefined : problem} onSignedIn={run} />
      )}
      {saved && !edits.isChanged && (
        <Note kind="good">
          <p>{texts.settings.saved}</p>
        </Note>
      )}
      <Group gap="sm">
        <Button type="submit" loading={busy} disabled={!edits.isChanged}>
          {texts.app.save}
        </Button>
        {onClose && (
          <Button variant="default" onClick={onClose}>
            {texts.app.cancel}
          </Button>
        )}
      </Group>
    </Fields>
  );
}
