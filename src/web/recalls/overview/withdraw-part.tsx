import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { RecallView } from '../../../recalls/recalls.views.js';
import { ReasonForm } from '../../frame/reason-form.js';
import { Section } from '../../frame/section.js';
import { Events } from '../../service/events.js';
import { useForgetAnswers } from '../../service/use-forget-answers.js';
import { useTexts } from '../../texts/texts.js';
import { withdrawRecall } from '../recalls.requests.js';

const longestReason = 500;

/** Ends a recall that was none: its holds are released. */
export function WithdrawPart({
  standing: { studioId },
  recall,
}: {
  standing: StandingView;
  recall: RecallView;
}) {
  const words = useTexts().withdrawal[recall.kind];
  const forget = useForgetAnswers();
  const events = useRef(new Events()).current;
  const [withdrawing, setWithdrawing] = useState(false);
  return (
    <Section title={words.title} hint={words.hint}>
      {withdrawing ? (
        <ReasonForm
          title={words.title}
          label={words.reason}
          hint={words.reasonHint}
          longest={longestReason}
          save={async (reason) => {
            await withdrawRecall(studioId, recall.id, {
              reason,
              ...events.of({ recallId: recall.id, reason }),
            });
            await forget();
          }}
          onCancel={() => setWithdrawing(false)}
        />
      ) : (
        <Button variant="default" onClick={() => setWithdrawing(true)}>
          {words.title}
        </Button>
      )}
    </Section>
  );
}
