import { Button, Group } from '@mantine/core';
import type { ServiceProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import { ProblemNote } from './problem-note.js';

/** The end of a form that changes something: what was wrong with it, and the two ways out. */
export function SaveOrCancel({
  problem,
  busy,
  save,
  onCancel,
}: {
  problem: ServiceProblem | undefined;
  busy: boolean;
  /** What is done, where it is not called saving. */
  save?: string;
  onCancel: () => void;
}) {
  const texts = useTexts();
  return (
    <>
      <ProblemNote problem={problem} />
      <Group gap="sm">
        <Button type="submit" loading={busy}>
          {save ?? texts.app.save}
        </Button>
        <Button variant="default" onClick={onCancel}>
          {texts.app.cancel}
        </Button>
      </Group>
    </>
  );
}
