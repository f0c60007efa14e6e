import { Button, Checkbox, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import { useNavigate } from 'react-router';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Fields } from '../../frame/fields.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { Events } from '../../service/events.js';
import { useAction } from '../../service/use-action.js';
import { useForgetAnswers } from '../../service/use-forget-answers.js';
import { useRequester } from '../../sign-in/requester.js';
import { useTexts } from '../../texts/texts.js';
import { openRecall } from '../recalls.requests.js';
import { useHasOpenForms } from '../scope/open-forms.js';
import { bodyOf } from '../scope/scope-body.js';
import { writtenScope } from '../scope/written-scope.js';
import { HoldChoice } from './hold-choice.js';
import { noticeBody } from './notice-body.js';
import styles from './opening.module.css';
import { SaidFieldsPart } from './said-fields.js';
import { byHandOrigin, saidBody, type TakenNotice } from './taken-notice.js';
import { titleOfScope } from './title-of-scope.js';
import type { Settling } from './use-settling.js';

/** The one step that counts: what is met is held, and the recall is open. */
export function OpenForm({
  standing: { studioId, permissions },
  taken,
  settling,
}: {
  standing: StandingView;
  taken: TakenNotice;
  settling: Settling;
}) {
  const texts = useTexts();
  const words = texts.opening;
  const open = useNavigate();
  const forget = useForgetAnswers();
  const { studios } = useRequester();
  const hasOpenForms = useHasOpenForms();
  const events = useRef(new Events()).current;
  const [typedTitle, setTypedTitle] = useState<string>();
  const [chainWide, setChainWide] = useState(false);
  const { scope, said, found } = settling;
  const title = typedTitle ?? (scope === null ? '' : titleOfScope(scope, texts));
  const { run, busy, problem } = useAction(async () => {
    if (scope === null) return;
    const content = {
      title: title.trim(),
      scope: bodyOf(scope),
      ...saidBody(said),
      // What was entered by hand is kept in words.
      ...(taken.origin === null
        ? noticeBody(byHandOrigin, writtenScope(scope, texts), said.reference)
        : noticeBody(taken.origin, taken.text, said.reference)),
      ...settling.heldBody(),
      ...(chainWide && { chainWide }),
    };
    const recall = await openRecall(studioId, { ...content, ...events.of(content) });
    events.renew();
    void open(pathOf({ studioId, area: 'recalls' }, recall.id));
    await forget();
  });
  const none = found.matches && found.matches.certainLots + found.matches.possibleLots === 0;
  return (
    <Section title={words.title} hint={words.hint}>
      <Fields onSubmit={() => void run()} label={words.title}>
        <TextInput
          label={words.name}
          description={words.nameHint}
          required
          maxLength={200}
          autoComplete="off"
          value={title}
          error={problem?.faultOf('title')}
          onChange={(event) => setTypedTitle(event.currentTarget.value)}
        />
        <HoldChoice settling={settling} />
        {studios.length > 1 && permissions.includes('answer recalls of the chain') && (
          <Checkbox
            label={words.chainWide}
            description={words.chainWideHint}
            checked={chainWide}
            onChange={(event) => setChainWide(event.currentTarget.checked)}
          />
        )}
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
        <ProblemNote problem={problem} />
        {hasOpenForms && <p role="status">{words.openForms}</p>}
        {none && <p className={styles.hint}>{words.nothingHere}</p>}
        <div>
          <Button type="submit" size="lg" loading={busy} disabled={!settling.isSettled || hasOpenForms}>
            {words.open}
          </Button>
        </div>
      </Fields>
    </Section>
  );
}
