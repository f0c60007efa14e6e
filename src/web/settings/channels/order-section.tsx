import { Stack } from '@mantine/core';
import type { ToldPersonView } from '../../../alerts/preferences/alert-preferences.views.js';
import { Note } from '../../frame/note.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { usePeople } from '../../service/studio-answers.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { showHandingOn } from './channels.requests.js';
import { OrderForm } from './order-form.js';

/** The order of people as it was chosen, and as it stands today. */
export function OrderSection({
  studioId,
  told,
}: {
  studioId: string;
  told: readonly ToldPersonView[] | undefined;
}) {
  const texts = useTexts();
  const words = texts.channels;
  const { answer: people, problem: peopleProblem } = usePeople(studioId);
  const { answer, problem, reload } = useAnswer(['handing on', studioId], () => showHandingOn(studioId));
  const personOf = (personId: string) => people?.find(({ id }) => id === personId);
  const nameOf = (personId: string) => personOf(personId)?.name ?? texts.records.unknownPerson;
  return (
    <Section title={words.order} hint={words.orderHint}>
      <Stack gap="lg">
        <ProblemNote problem={problem ?? peopleProblem} />
        {!(answer && people) && !problem && !peopleProblem && <p role="status">{texts.app.loading}</p>}
        {answer?.isDefault && (
          <Note kind="plain">
            <p>{words.orderAssumed}</p>
          </Note>
        )}
        {answer && people && (
          <p>
            {answer.order.length === 0
              ? words.noOrder
              : `${words.orderNow}: ${answer.order.map(nameOf).join(' → ')}`}
          </p>
        )}
        {answer && people && told && (
          <OrderForm
            studioId={studioId}
            handingOn={answer}
            told={told}
            nameOf={nameOf}
            hasLeft={(personId) => personOf(personId)?.state !== 'active'}
            reload={reload}
          />
        )}
      </Stack>
    </Section>
  );
}
