import { Button } from '@mantine/core';
import { useEffect, useState } from 'react';
import { useSearchParams } from 'react-router';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Page } from '../../frame/page.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { readNotice, showNotice } from '../recalls.requests.js';
import { WithOpenForms } from '../scope/open-forms.js';
import { OpenForm } from './open-form.js';
import { SettleParts } from './settle-parts.js';
import { TakeNotice } from './take-notice.js';
import { saidOf, type TakenNotice } from './taken-notice.js';
import { takenText } from './taken-text.js';
import { useSettling } from './use-settling.js';

/** From the text of a notice to an open recall, on one page. */
export function AnswerPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const [parameters, setParameters] = useSearchParams();
  const noticeId = parameters.get('notice');
  const [taken, setTaken] = useState<{ notice: TakenNotice; key: number }>();
  const take = (notice: TakenNotice) => {
    setTaken({ notice, key: (taken?.key ?? 0) + 1 });
    window.scrollTo(0, 0);
  };
  return (
    <Page above={standing.studioName} title={texts.notice.title} lead={texts.notice.lead}>
      {taken ? (
        <>
          <Button
            mb="xl"
            variant="default"
            onClick={() => {
              setTaken(undefined);
              setParameters({}, { replace: true });
            }}
          >
            {texts.notice.again}
          </Button>
          <Settle key={taken.key} standing={standing} taken={taken.notice} />
        </>
      ) : noticeId === null ? (
        <TakeNotice studioId={standing.studioId} onTaken={take} />
      ) : (
        <TakeFromInbox studioId={standing.studioId} noticeId={noticeId} onTaken={take} />
      )}
    </Page>
  );
}

function Settle({ standing, taken }: { standing: StandingView; taken: TakenNotice }) {
  const settling = useSettling(standing.studioId, taken);
  return (
    <WithOpenForms>
      <SettleParts studioId={standing.studioId} taken={taken} settling={settling} />
      <OpenForm standing={standing} taken={taken} settling={settling} />
    </WithOpenForms>
  );
}

/** A published notice is read as soon as it is opened. */
function TakeFromInbox({
  studioId,
  noticeId,
  onTaken,
}: {
  studioId: string;
  noticeId: string;
  onTaken: (notice: TakenNotice) => void;
}) {
  const texts = useTexts();
  const { answer, problem } = useAnswer(['notice read', studioId, noticeId], async () => {
    const notice = await showNotice(studioId, noticeId);
    return { notice, reading: await readNotice(studioId, notice.text) };
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when it is read.
  useEffect(() => {
    if (!answer) return;
    const { notice, reading } = answer;
    onTaken({
      ...takenText(notice.text, reading, { kind: 'on record', noticeId }),
      said: saidOf({ ...reading, reference: reading.reference ?? notice.reference }),
    });
  }, [answer]);
  return problem ? <ProblemNote problem={problem} /> : <p role="status">{texts.app.loading}</p>;
}
