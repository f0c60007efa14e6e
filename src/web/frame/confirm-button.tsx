import { Button, type ButtonProps, Group, Modal } from '@mantine/core';
import { type ReactNode, useState } from 'react';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { ProblemNote } from './problem-note.js';

/** A button for what cannot be taken back: it says what will happen, and does it when that is confirmed. */
export function ConfirmButton({
  question,
  action,
  label,
  children,
  ...others
}: ButtonProps & {
  question: string;
  action: () => Promise<void>;
  /** The button's name where its words alone do not say of what. */
  label?: string;
  children: ReactNode;
}) {
  const texts = useTexts();
  const [asking, setAsking] = useState(false);
  const { run, busy, problem } = useAction(async () => {
    await action();
    setAsking(false);
  });
  const name = label ?? String(children);
  return (
    <>
      <Button variant="default" {...others} aria-label={label} onClick={() => setAsking(true)}>
        {children}
      </Button>
      <Modal
        opened={asking}
        onClose={() => setAsking(false)}
        title={name}
        centered
        closeButtonProps={{ 'aria-label': texts.app.close, size: 'xl' }}
      >
        <p>{question}</p>
        <ProblemNote problem={problem} />
        <Group mt="lg" gap="sm">
          <Button color="petrol" loading={busy} onClick={() => void run()}>
            {children}
          </Button>
          <Button variant="default" data-autofocus onClick={() => setAsking(false)}>
            {texts.app.cancel}
          </Button>
        </Group>
      </Modal>
    </>
  );
}
