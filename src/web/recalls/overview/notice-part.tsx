import { useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { RecallView } from '../../../recalls/recalls.views.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { MarkedNotice } from '../reading/marked-notice.js';
import styles from '../recalls.module.css';
import { showNotice } from '../recalls.requests.js';

/** The notices of a recall as they came, the latest first; each is fetched when it is looked at. */
export function NoticePart({ standing, recall }: { standing: StandingView; recall: RecallView }) {
  const texts = useTexts();
  const words = texts.recallOverview;
  const noticeIds = [...new Set(recall.scopes.flatMap(({ noticeId }) => noticeId ?? []))];
  return (
    <Section title={words.notice} hint={words.noticeHint}>
      {noticeIds.length === 0 && <p>{words.noNotice}</p>}
      {noticeIds.map((noticeId) => (
        <OneNotice key={noticeId} standing={standing} noticeId={noticeId} />
      ))}
    </Section>
  );
}

function OneNotice({ standing, noticeId }: { standing: StandingView; noticeId: string }) {
  const texts = useTexts();
  const [isOpen, setOpen] = useState(false);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className={styles.summary}>{texts.recallOverview.showNotice}</summary>
      {isOpen && <NoticeText standing={standing} noticeId={noticeId} />}
    </details>
  );
}

function NoticeText({ standing: { studioId }, noticeId }: { standing: StandingView; noticeId: string }) {
  const texts = useTexts();
  const when = useStudioInstants(studioId);
  const { answer, problem } = useAnswer(['notice', studioId, noticeId], () => showNotice(studioId, noticeId));
  return (
    <>
      <ProblemNote problem={problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {answer && (
        <>
          <p>
            {texts.recallOverview.noticeFrom(texts.notice.sources[answer.source], when(answer.occurredAt))}
          </p>
          <MarkedNotice text={answer.text} marks={noMarks} toShow={undefined} />
        </>
      )}
    </>
  );
}

const noMarks: never[] = [];
