import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { StandingView } from '../../../../identity/sign-in/sign-in.views.js';
import type { ClosingView } from '../../../../recalls/closing/closing.views.js';
import type { RecallView } from '../../../../recalls/recalls.views.js';
import { Choice } from '../../../frame/choice.js';
import { Fields } from '../../../frame/fields.js';
import { ProblemNote } from '../../../frame/problem-note.js';
import { Section } from '../../../frame/section.js';
import { Events } from '../../../service/events.js';
import { usePeople } from '../../../service/studio-answers.js';
import { useAction } from '../../../service/use-action.js';
import { useForgetAnswers } from '../../../service/use-forget-answers.js';
import { useTexts } from '../../../texts/texts.js';
import { useReadiness } from '../../recalls.requests.js';
import { closeRecall } from './closing.requests.js';
import { ObstaclesSection } from './obstacles-section.js';
import { OverrideField } from './override-field.js';
import { overridesOf, type Reasons, standingWithout } from './overrides.js';

/** What stands against closing, seen to or overridden with a reason; then the signatures. */
export function ClosingForm({
  standing: { studioId, personId },
  recall,
  onClosed,
}: {
  standing: StandingView;
  recall: RecallView;
  onClosed: (closed: ClosingView) => void;
}) {
  const texts = useTexts();
  const words = texts.recallClosing;
  const people = usePeople(studioId).answer;
  const obstacles = useReadiness(studioId, recall.id).answer?.obstacles;
  const forget = useForgetAnswers();
  const [reasons, setReasons] = useState<Reasons>({});
  const [secondSignedBy, setSecond] = useState('');
  const events = useRef(new Events()).current;
  const isDrill = recall.kind === 'drill';
  const names = (obstacles ?? []).map(({ obstacle }) => obstacle);
  const standing = isDrill ? [] : standingWithout(names, reasons);
  const { run, busy, problem } = useAction(async () => {
    const closing = {
      signedBy: personId,
      ...(secondSignedBy !== '' && { secondSignedBy }),
      overrides: isDrill ? [] : overridesOf(names, reasons),
    };
    try {
      onClosed(await closeRecall(studioId, recall.id, closing, events.of(closing)));
    } finally {
      // Also when it was refused: something else may stand against it by now.
      await forget();
    }
  });
  const me = people?.find(({ id }) => id === personId)?.name;
  const others = people?.filter(({ id, state }) => id !== personId && state === 'active') ?? [];
  return (
    <>
      <ObstaclesSection
        studioId={studioId}
        recall={recall}
        {...(!isDrill && {
          override: (obstacle) => (
            <OverrideField
              obstacle={obstacle}
              reason={reasons[obstacle]}
              onChange={(reason) => setReasons({ ...reasons, [obstacle]: reason })}
            />
          ),
        })}
      />
      <Section title={words.sign[recall.kind]} hint={words.signHint[recall.kind]}>
        <Fields onSubmit={() => void run()} label={words.sign[recall.kind]}>
          {me !== undefined && me !== null && <p>{words.signedByYou(me)}</p>}
          <Choice
            label={words.second}
            description={words.secondHint}
            value={secondSignedBy}
            none={words.noSecond}
            choices={others.map(({ id, name }) => ({ value: id, label: name ?? id }))}
            error={problem?.faultOf('secondSignedBy')}
            onChange={setSecond}
          />
          {standing.length > 0 && <p id="standing-obstacles">{words.stillStanding(standing.length)}</p>}
          <ProblemNote problem={problem} />
          <div>
            <Button
              type="submit"
              loading={busy}
              disabled={obstacles === undefined || standing.length > 0}
              {...(standing.length > 0 && { 'aria-describedby': 'standing-obstacles' })}
            >
              {words.close[recall.kind]}
            </Button>
          </div>
        </Fields>
      </Section>
    </>
  );
}
