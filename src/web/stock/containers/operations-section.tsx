import { Button, Group } from '@mantine/core';
import { useRef, useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { ShownContainerView } from '../../../stock/container-list.views.js';
import type { ContainerChangeView } from '../../../stock/container-operations.views.js';
import { ConfirmButton } from '../../frame/confirm-button.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { Events } from '../../service/events.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import type { StudioFacts } from '../use-studio-facts.js';
import { allowedOperations, type Operation } from './allowed-operations.js';
import { containerCondition } from './container-condition.js';
import { type GivenOperation, recordOperation } from './containers.requests.js';
import { CountForm } from './count-form.js';
import { OperationForm } from './operation-form.js';

/** What can be recorded of a container in its state, by whoever looks at it; nothing for who may not. */
export function OperationsSection({
  standing: { studioId, permissions },
  container,
  facts,
  onRecorded,
}: {
  standing: StandingView;
  container: ShownContainerView;
  facts: StudioFacts;
  onRecorded: (operation: Operation, change: ContainerChangeView) => Promise<void>;
}) {
  const texts = useTexts();
  const [asking, setAsking] = useState<Operation>();
  const events = useRef(new Events()).current;
  const allowed = allowedOperations(container, permissions);
  const { standing } = containerCondition(container, facts.near);
  const record = async (given: GivenOperation) => {
    const change = await recordOperation(studioId, container.id, given, events.of(given));
    events.renew();
    setAsking(undefined);
    await onRecorded(given.operation, change);
  };
  const opening = useAction(() => record({ operation: 'open' }));
  if (allowed.length === 0) return null;
  const buttonOf = (operation: Operation) => {
    switch (operation) {
      case 'open':
        return (
          <Button
            key={operation}
            variant={standing === 'fault' ? 'default' : 'filled'}
            loading={opening.busy}
            onClick={() => void opening.run()}
          >
            {texts.operations[operation]}
          </Button>
        );
      case 'finish':
      case 'keep for practice':
        return (
          <ConfirmButton
            key={operation}
            question={texts.operationHints[operation]}
            action={() => record({ operation })}
          >
            {texts.operations[operation]}
          </ConfirmButton>
        );
      default:
        return (
          <Button key={operation} variant="default" onClick={() => setAsking(operation)}>
            {texts.operations[operation]}
          </Button>
        );
    }
  };
  return (
    <Section title={texts.container.operations} hint={texts.container.operationsHint}>
      <ProblemNote problem={opening.problem} />
      {asking === undefined && <Group gap="sm">{allowed.map(buttonOf)}</Group>}
      {asking === 'count' && (
        <CountForm container={container} record={record} onCancel={() => setAsking(undefined)} />
      )}
      {isAsking(asking) && (
        <OperationForm
          key={asking}
          container={container}
          facts={facts}
          operation={asking}
          record={record}
          onCancel={() => setAsking(undefined)}
        />
      )}
    </Section>
  );
}

function isAsking(
  operation: Operation | undefined,
): operation is Exclude<Operation, 'open' | 'count' | 'finish' | 'keep for practice'> {
  return operation !== undefined && !['open', 'count', 'finish', 'keep for practice'].includes(operation);
}
