import { Button } from '@mantine/core';
import { useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { RecallScopeView, RecallView } from '../../../recalls/recalls.views.js';
import { Fields } from '../../frame/fields.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { RecallFrame } from '../recall-frame.js';
import { readNotice } from '../recalls.requests.js';
import { WithOpenForms } from '../scope/open-forms.js';
import { AmendForm } from './amend-form.js';
import { joinedScope } from './joined-scope.js';
import { isTooLong, NoticeTextField } from './notice-text-field.js';
import styles from './opening.module.css';
import { SettleParts } from './settle-parts.js';
import { saidOf, type TakenNotice } from './taken-notice.js';
import { takenText } from './taken-text.js';
import { useSettling } from './use-settling.js';

/** Widens or corrects a recall, by a further notice or by hand. */
export function AmendPage({ standing, id }: { standing: StandingView; id: string }) {
  return (
    <RecallFrame standing={standing} recallId={id}>
      {(recall) => <Amending standing={standing} recall={recall} />}
    </RecallFrame>
  );
}

function Amending({ standing, recall }: { standing: StandingView; recall: RecallView }) {
  // What counted when this began; the form says so when somebody else amended it meanwhile.
  const [latest] = useState(recall.scopes[0]);
  const [taken, setTaken] = useState<TakenNotice>();
  if (!latest) return null;
  return taken ? (
    <Settle standing={standing} recall={recall} begunFrom={latest.number} taken={taken} />
  ) : (
    <FurtherNotice studioId={standing.studioId} latest={latest} onTaken={setTaken} />
  );
}

function Settle({
  standing,
  recall,
  begunFrom,
  taken,
}: {
  standing: StandingView;
  recall: RecallView;
  begunFrom: number;
  taken: TakenNotice;
}) {
  const settling = useSettling(standing.studioId, taken);
  return (
    <WithOpenForms>
      <SettleParts studioId={standing.studioId} taken={taken} settling={settling} />
      <AmendForm
        standing={standing}
        recall={recall}
        begunFrom={begunFrom}
        taken={taken}
        settling={settling}
      />
    </WithOpenForms>
  );
}

/** The first step: whether there is a further notice. */
function FurtherNotice({
  studioId,
  latest,
  onTaken,
}: {
  studioId: string;
  latest: RecallScopeView;
  onTaken: (taken: TakenNotice) => void;
}) {
  const texts = useTexts();
  const words = texts.amending;
  const [text, setText] = useState('');
  const scope = latest.scope as NonNullable<TakenNotice['scope']>;
  const said = saidOf(latest);
  const { run, busy, problem } = useAction(async () => {
    const reading = takenText(text, await readNotice(studioId, text), { kind: 'written', source: 'pasted' });
    const told = Object.entries(reading.said).filter(([, value]) => value !== '');
    onTaken({
      ...reading,
      scope: joinedScope(reading.scope, scope),
      matches: undefined,
      said: { ...said, ...Object.fromEntries(told) },
    });
  });
  return (
    <Section title={words.title} hint={words.hint}>
      <Fields onSubmit={() => void run()} label={words.title}>
        <NoticeTextField
          label={words.notice}
          description={words.noticeHint}
          rows={8}
          text={text}
          fault={problem?.faultOf('text')}
          onChanged={setText}
        />
        <ProblemNote problem={problem} />
        <div className={styles.ways}>
          <Button type="submit" loading={busy} disabled={text.trim() === '' || isTooLong(text)}>
            {texts.notice.read}
          </Button>
          <Button
            variant="default"
            onClick={() =>
              onTaken({ origin: null, text: '', parts: [], remarks: [], scope, matches: undefined, said })
            }
          >
            {words.byHand}
          </Button>
        </div>
      </Fields>
    </Section>
  );
}
