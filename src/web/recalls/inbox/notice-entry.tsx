import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import { Link } from 'react-router';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { WaitingNoticeView } from '../../../recalls/recalls.views.js';
import { Entry } from '../../frame/entries.js';
import { pathOf } from '../../frame/places.js';
import { ReasonForm } from '../../frame/reason-form.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { Events } from '../../service/events.js';
import { useForgetAnswers } from '../../service/use-forget-answers.js';
import { useTexts } from '../../texts/texts.js';
import styles from '../recalls.module.css';
import { dismissNotice } from '../recalls.requests.js';

const longestReason = 500;

/** A published notice: answered by a recall, or found to ask for nothing. */
export function NoticeEntry({
  standing: { studioId, permissions },
  notice,
}: {
  standing: StandingView;
  notice: WaitingNoticeView;
}) {
  const texts = useTexts();
  const words = texts.inbox;
  const when = useStudioInstants(studioId);
  const forget = useForgetAnswers();
  const events = useRef(new Events()).current;
  const [dismissing, setDismissing] = useState(false);
  const name = notice.reference ?? words.withoutReference;
  const answer = `${pathOf({ studioId, area: 'recalls' }, 'answer')}?notice=${notice.id}`;
  return (
    <Entry
      name={name}
      actions={
        permissions.includes('answer recalls') &&
        !dismissing && (
          <>
            <Button component={Link} to={answer} aria-label={words.answerOf(name)}>
              {words.answer}
            </Button>
            <Button variant="default" aria-label={words.dismissOf(name)} onClick={() => setDismissing(true)}>
              {words.dismiss}
            </Button>
          </>
        )
      }
      below={
        dismissing && (
          <ReasonForm
            title={words.dismissOf(name)}
            label={words.dismissReason}
            hint={words.dismissHint}
            longest={longestReason}
            save={async (reason) => {
              await dismissNotice(studioId, notice.id, { reason, ...events.of({ id: notice.id, reason }) });
              await forget();
            }}
            onCancel={() => setDismissing(false)}
          />
        )
      }
    >
      <p>{words.came(when(notice.occurredAt))}</p>
      <p className={styles.excerpt}>{notice.beginning}</p>
    </Entry>
  );
}
