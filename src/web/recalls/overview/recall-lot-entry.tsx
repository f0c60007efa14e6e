import { Button, Group } from '@mantine/core';
import { useRef, useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { RecallLotView, RecallView } from '../../../recalls/recalls.views.js';
import type { LotDecision } from '../../../recalls/vocabulary.js';
import { Entry } from '../../frame/entries.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { ReasonForm } from '../../frame/reason-form.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { Events } from '../../service/events.js';
import { usePeople } from '../../service/studio-answers.js';
import { useForgetAnswers } from '../../service/use-forget-answers.js';
import { nameOf, writtenAmount } from '../../stock/amounts.js';
import { Sign, type Standing } from '../../stock/sign.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { LotReasons } from '../matches/lot-reasons.js';
import { decideLot } from '../recalls.requests.js';

const longestReason = 500;
const signs: Record<RecallLotView['standing'], Standing> = {
  affected: 'fault',
  undecided: 'care',
  'not affected': 'good',
};
const decisions: readonly LotDecision[] = ['affected', 'not affected'];

/** A lot that a recall meets: why, what was decided of it, and the decision that it waits for. */
export function RecallLotEntry({
  standing: { studioId, permissions },
  recall,
  lot,
}: {
  standing: StandingView;
  recall: RecallView;
  lot: RecallLotView;
}) {
  const texts = useTexts();
  const words = texts.recallOverview;
  const when = useStudioInstants(studioId);
  const people = usePeople(studioId);
  const forget = useForgetAnswers();
  const events = useRef(new Events()).current;
  const [deciding, setDeciding] = useState<LotDecision>();
  const name = `${nameOf(lot)}, ${lot.code ?? texts.matches.noCode}`;
  const { decision } = lot;
  const mayDecide =
    lot.grade === 'possible' && recall.state === 'open' && permissions.includes('answer recalls');
  const decide = async (chosen: LotDecision, reason: string) => {
    await decideLot(studioId, recall.id, lot.lotId, {
      decision: chosen,
      reason,
      ...events.of({ lotId: lot.lotId, chosen, reason }),
    });
    events.renew();
    await forget();
    setDeciding(undefined);
  };
  const by = people.answer?.find(({ id }) => id === decision?.personId)?.name;
  return (
    <Entry
      name={
        <PageLink alone to={pathOf({ studioId, area: 'stock' }, 'lots', lot.lotId)}>
          {name}
        </PageLink>
      }
      below={
        deciding !== undefined ? (
          <ReasonForm
            key={deciding}
            title={words.decideOf(texts.lotDecisions[deciding], name)}
            label={words.decisionReason[deciding]}
            hint={words.decisionHint[deciding]}
            longest={longestReason}
            save={(reason) => decide(deciding, reason)}
            onCancel={() => setDeciding(undefined)}
          />
        ) : (
          mayDecide && (
            <Group gap="sm">
              {decisions
                .filter((one) => one !== lot.standing)
                .map((one) => (
                  <Button
                    key={one}
                    variant="default"
                    aria-label={words.decideOf(texts.lotDecisions[one], name)}
                    onClick={() => setDeciding(one)}
                  >
                    {words.decide[one]}
                  </Button>
                ))}
            </Group>
          )
        )
      }
    >
      <p>
        {[
          lot.makerName,
          lot.useBy === null ? texts.lot.noUseBy : texts.lot.lastDay(writtenDay(lot.useBy, texts.language)),
          writtenAmount({ pieces: lot.onHandPieces, microlitres: lot.onHandMicrolitres }, texts),
        ].join(', ')}
      </p>
      <p>
        <Sign standing={signs[lot.standing]}>
          {lot.grade === 'certain' ? words.certainlyAffected : words.standings[lot.standing]}
        </Sign>
        {recall.kind === 'recall' && (lot.held ? words.held : words.notHeld)}
      </p>
      <LotReasons reasons={lot.reasons} />
      {decision !== null && (
        <p>
          {words.decided(
            texts.lotDecisions[decision.decision],
            by ?? texts.alerts.somebody,
            when(decision.occurredAt),
            decision.reason,
          )}
        </p>
      )}
    </Entry>
  );
}
