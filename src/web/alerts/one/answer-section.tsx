import { Button, Group } from '@mantine/core';
import { useRef, useState } from 'react';
import type { AlertView } from '../../../alerts/alerts.views.js';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { ReasonForm } from '../../frame/reason-form.js';
import { Section } from '../../frame/section.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { acknowledge, addNote, close, give, putOff } from '../alerts.requests.js';
import { useAlertsAnew } from '../use-alerts-anew.js';
import { GiveForm } from './give-form.js';
import { PutOffForm } from './put-off-form.js';

const longestNote = 2_000;

type Step = 'put off' | 'give' | 'note' | 'close';

/** What can be done about an alert; nothing of it is taken back. */
export function AnswerSection({
  standing: { studioId },
  alert,
}: {
  standing: StandingView;
  alert: AlertView;
}) {
  const texts = useTexts();
  const words = texts.alertPages.one;
  const alertsAnew = useAlertsAnew(studioId);
  const [step, setStep] = useState<Step>();
  const ids = useRef(new RequestIds()).current;
  /** One write with an id of its own, after which everything is asked anew. */
  const write = async (content: object, send: (id: string) => Promise<unknown>) => {
    await send(ids.for(content));
    ids.renew();
    setStep(undefined);
    await alertsAnew();
  };
  const { id: alertId, closedAt } = alert;
  const taking = useAction(() => write({ alertId }, (id) => acknowledge(studioId, alertId, id)));
  const onCancel = () => setStep(undefined);
  const isOpen = closedAt === null;
  return (
    <Section title={words.answer} hint={isOpen ? words.answerHint : words.isOver}>
      {step === undefined && (
        <Group gap="sm">
          {isOpen && alert.acknowledgedBy === null && (
            <Button loading={taking.busy} onClick={() => void taking.run()}>
              {alert.endsWhenAcknowledged ? texts.alerts.see : texts.alerts.take}
            </Button>
          )}
          {isOpen && (
            <>
              <Button variant="default" onClick={() => setStep('put off')}>
                {words.putOffIt}
              </Button>
              <Button variant="default" onClick={() => setStep('give')}>
                {words.giveIt}
              </Button>
            </>
          )}
          <Button variant="default" onClick={() => setStep('note')}>
            {words.noteIt}
          </Button>
          {isOpen && (
            <Button variant="default" onClick={() => setStep('close')}>
              {words.closeIt}
            </Button>
          )}
        </Group>
      )}
      <ProblemNote problem={taking.problem} />
      {step === 'put off' && (
        <PutOffForm
          studioId={studioId}
          save={(until) => write({ until }, (id) => putOff(studioId, alertId, { id, until }))}
          onCancel={onCancel}
        />
      )}
      {step === 'give' && (
        <GiveForm
          studioId={studioId}
          givenTo={alert.givenTo}
          save={(personId) => write({ personId }, (id) => give(studioId, alertId, { id, personId }))}
          onCancel={onCancel}
        />
      )}
      {step === 'note' && (
        <ReasonForm
          title={words.noteIt}
          press={words.noteIt}
          field="note"
          longest={longestNote}
          label={words.note}
          hint={words.noteHint}
          save={(note) => write({ note }, (id) => addNote(studioId, alertId, { id, note }))}
          onCancel={onCancel}
        />
      )}
      {step === 'close' && (
        <ReasonForm
          title={words.closeIt}
          press={words.closeIt}
          field="note"
          longest={longestNote}
          label={words.closeNote}
          hint={`${words.closeHint} ${words.noteHint}`}
          save={(note) => write({ closes: note }, (id) => close(studioId, alertId, { id, note }))}
          onCancel={onCancel}
        />
      )}
    </Section>
  );
}
