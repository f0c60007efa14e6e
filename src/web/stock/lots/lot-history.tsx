import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { LotView, MovementView } from '../../../stock/lot-list.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import { MoreButton } from '../../frame/more-button.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { ReasonForm } from '../../frame/reason-form.js';
import { Section } from '../../frame/section.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { Events } from '../../service/events.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { writtenAmount, writtenChange, writtenLabel } from '../amounts.js';
import type { StudioFacts } from '../use-studio-facts.js';
import { isReversible } from './is-reversible.js';
import { reverseMovement, showLot } from './lots.requests.js';
import { type Amount, runningTotals, sumOf } from './running-totals.js';

const longestReason = 300;

/** Every movement of a lot, the latest first, with what was on hand after it. Nothing is ever taken out of it. */
export function LotHistory({
  standing,
  lot,
  facts,
  onChanged,
}: {
  standing: StandingView;
  lot: LotView;
  facts: StudioFacts;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const { studioId } = standing;
  const list = usePages(['lot history', studioId, lot.id], async (after) => {
    const page = await showLot(studioId, lot.id, after === undefined ? {} : { after });
    const onHand = sumOf(page.massBalance);
    return { items: page.movements.map((movement) => ({ movement, onHand })), next: page.nextMovement };
  });
  const onHand = list.items?.[0]?.onHand ?? { pieces: 0, microlitres: 0 };
  const lines = runningTotals(list.items?.map(({ movement }) => movement) ?? [], onHand);
  const labels = new Map(lot.containers.map(({ id, labelCode }) => [id, labelCode]));
  const byId = new Map(lines.map(({ movement }) => [movement.id, movement]));
  return (
    <Section title={texts.history.title} hint={texts.history.hint}>
      <ProblemNote problem={list.problem} />
      {!list.items && !list.problem && <p role="status">{texts.app.loading}</p>}
      {lines.length > 0 && (
        <Entries label={texts.history.title}>
          {lines.map(({ movement, after }) => (
            <MovementEntry
              key={movement.id}
              standing={standing}
              movement={movement}
              reversed={movement.reversesId === null ? undefined : byId.get(movement.reversesId)}
              after={after}
              label={labels.get(movement.containerId)}
              person={facts.personName(movement.personId)}
              onReversed={async () => {
                await Promise.all([list.reload(), onChanged()]);
              }}
            />
          ))}
        </Entries>
      )}
      <MoreButton list={list} />
    </Section>
  );
}

function MovementEntry({
  standing: { studioId, permissions },
  movement,
  reversed,
  after,
  label,
  person,
  onReversed,
}: {
  standing: StandingView;
  movement: MovementView;
  /** The movement it takes back, where that is shown too. */
  reversed: MovementView | undefined;
  after: Amount;
  label: string | undefined;
  person: string | undefined;
  onReversed: () => Promise<void>;
}) {
  const texts = useTexts();
  const [taking, setTaking] = useState(false);
  const events = useRef(new Events()).current;
  const { kind, reason, occurredAt, reversesId, reversedById, sessionId } = movement;
  const at = useStudioInstants(studioId);
  const when = at(occurredAt);
  const word = texts.movementKinds[kind] ?? kind;
  const name = `${word} ${writtenChange(movement, texts)}`;
  const about = [when, person, label !== undefined && writtenLabel(label), reason].filter(
    (one) => typeof one === 'string',
  );
  return (
    <Entry
      name={reversesId === null ? name : texts.history.reversal(name)}
      isOver={reversedById !== null}
      actions={
        permissions.includes('correct stock') &&
        isReversible(movement) &&
        !taking && (
          <Button
            variant="default"
            aria-label={texts.history.takeBackOf(`${name}, ${when}`)}
            onClick={() => setTaking(true)}
          >
            {texts.history.takeBack}
          </Button>
        )
      }
      below={
        taking && (
          <ReasonForm
            title={texts.history.takeBackOf(`${name}, ${when}`)}
            label={texts.history.takeBackReason}
            hint={texts.operationFields.reasonHint}
            longest={longestReason}
            save={async (why) => {
              const event = events.of({ movementId: movement.id, why });
              await reverseMovement(studioId, movement.id, why, event);
              await onReversed();
              setTaking(false);
            }}
            onCancel={() => setTaking(false)}
          />
        )
      }
    >
      <p>{about.join(', ')}</p>
      {reversesId !== null && (
        <p>
          {reversed
            ? texts.history.reverses(
                `${texts.movementKinds[reversed.kind] ?? reversed.kind} ${writtenChange(reversed, texts)}, ${at(reversed.occurredAt)}`,
              )
            : texts.history.reversesEarlier}
        </p>
      )}
      {reversedById !== null && <p>{texts.history.wasReversed}</p>}
      {sessionId !== null && (
        <PageLink alone to={pathOf({ studioId, area: 'records' }, 'sessions', sessionId)}>
          {texts.history.toSession}
        </PageLink>
      )}
      <p>{texts.history.after(writtenAmount(after, texts))}</p>
    </Entry>
  );
}
