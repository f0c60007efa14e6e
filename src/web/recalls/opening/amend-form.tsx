import { Button, Checkbox, Group, Textarea } from '@mantine/core';
import { useRef, useState } from 'react';
import { Link, useNavigate } from 'react-router';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { RecallView } from '../../../recalls/recalls.views.js';
import { Fields } from '../../frame/fields.js';
import { Note } from '../../frame/note.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { Events } from '../../service/events.js';
import { useAction } from '../../service/use-action.js';
import { useForgetAnswers } from '../../service/use-forget-answers.js';
import { useTexts } from '../../texts/texts.js';
import { amendRecall } from '../recalls.requests.js';
import { useHasOpenForms } from '../scope/open-forms.js';
import { bodyOf } from '../scope/scope-body.js';
import { HoldChoice } from './hold-choice.js';
import { noticeBody } from './notice-body.js';
import styles from './opening.module.css';
import { SaidFieldsPart } from './said-fields.js';
import { saidBody, type TakenNotice } from './taken-notice.js';
import type { Settling } from './use-settling.js';

const longestReason = 500;

/** Writes what a recall is about from now on, and why. */
export function AmendForm({
  standing: { studioId },
  recall,
  begunFrom,
  taken,
  settling,
}: {
  standing: StandingView;
  recall: RecallView;
  /** The number of the scope this was begun from. */
  begunFrom: number;
  taken: TakenNotice;
  settling: Settling;
}) {
  const texts = useTexts();
  const words = texts.amending;
  const open = useNavigate();
  const forget = useForgetAnswers();
  const events = useRef(new Events()).current;
  const [reason, setReason] = useState('');
  const [releaseUnmet, setReleaseUnmet] = useState(false);
  const { scope, said } = settling;
  const isStale = recall.scopeNumber !== begunFrom;
  const overview = pathOf({ studioId, area: 'recalls' }, recall.id);
  const hasOpenForms = useHasOpenForms();
  const { run, busy, problem } = useAction(async () => {
    if (scope === null) return;
    const content = {
      scope: bodyOf(scope),
      reason: reason.trim(),
      ...saidBody(said),
      ...(taken.origin !== null && noticeBody(taken.origin, taken.text, said.reference)),
      ...settling.heldBody(),
      ...(releaseUnmet && { releaseUnmet }),
    };
    await amendRecall(studioId, recall.id, { ...content, ...events.of(content) });
    events.renew();
    void open(overview);
    await forget();
  });
  return (
    <Section title={words.amend} hint={recall.state === 'open' ? words.amendHint : words.reopenHint}>
      <Fields onSubmit={() => void run()} label={words.amend}>
        <Textarea
          label={words.reason}
          description={words.reasonHint}
          required
          autosize
          minRows={2}
          maxLength={longestReason}
          autoComplete="off"
          value={reason}
          error={problem?.faultOf('reason')}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        <HoldChoice settling={settling} />
        <Checkbox
          label={words.releaseUnmet}
          description={words.releaseUnmetHint}
          checked={releaseUnmet}
          onChange={(event) => setReleaseUnmet(event.currentTarget.checked)}
        />
        <details className={styles.about}>
          <summary>{texts.saidOfRecall.title}</summary>
          <div className={styles.fields}>
            <SaidFieldsPart
              said={said}
              faultOf={(field) => problem?.faultOf(field)}
              onChanged={settling.setSaid}
            />
          </div>
        </details>
        {isStale && (
          <Note kind="fault">
            <p>{words.stale}</p>
          </Note>
        )}
        {hasOpenForms && <p role="status">{texts.opening.openForms}</p>}
        <ProblemNote problem={problem} />
        <Group gap="sm">
          <Button type="submit" loading={busy} disabled={!settling.isSettled || isStale || hasOpenForms}>
            {words.amend}
          </Button>
          <Button variant="default" component={Link} to={overview}>
            {texts.app.cancel}
          </Button>
        </Group>
      </Fields>
    </Section>
  );
}
