import { Button } from '@mantine/core';
import { Fragment, useState } from 'react';
import type { BalanceFigure } from '../../../../recalls/balance/balance-account.js';
import type { LotBalanceView } from '../../../../recalls/balance/recall-balance.views.js';
import { Entry } from '../../../frame/entries.js';
import { PageLink } from '../../../frame/navigation.js';
import { PagedEntries } from '../../../frame/paged-entries.js';
import { pathOf } from '../../../frame/places.js';
import { useStudioInstants } from '../../../frame/use-studio-instants.js';
import { usePages } from '../../../service/use-pages.js';
import { nameOf, writtenAmount, writtenChange, writtenVolume } from '../../../stock/amounts.js';
import { useTexts } from '../../../texts/texts.js';
import styles from './balance.module.css';
import { listMovementsBehind } from './balance.requests.js';

/** The account of one lot: each figure, and the movements behind it. */
export function LotAccount({
  studioId,
  recallId,
  lot,
}: {
  studioId: string;
  recallId: string;
  lot: LotBalanceView;
}) {
  const texts = useTexts();
  const words = texts.recallBalance;
  const [shown, setShown] = useState<BalanceFigure>();
  const name = words.lotName(nameOf(lot), lot.lotCode ?? words.noCode);
  const { onHand, notAccounted, unexplained, reachedThroughBlends } = lot;
  return (
    <Entry
      name={
        <PageLink alone to={pathOf({ studioId, area: 'stock' }, 'lots', lot.lotId)}>
          {name}
        </PageLink>
      }
      mark={lot.isBlend ? words.blend : lot.standing === 'undecided' ? words.undecided : undefined}
      below={
        <div className={styles.scroll}>
          <table aria-label={words.table(name)} className={styles.account}>
            <thead>
              <tr>
                <th scope="col">{words.figure}</th>
                <th scope="col">{words.amount}</th>
                <th scope="col">{words.behind}</th>
              </tr>
            </thead>
            <tbody>
              {lot.figures
                .filter(({ movements }) => movements > 0)
                .map((figure) => {
                  const kind = words.kinds[figure.kind];
                  const isShown = shown === figure.kind;
                  return (
                    <Fragment key={figure.kind}>
                      <tr>
                        <th scope="row">{kind}</th>
                        <td>{writtenAmount(figure, texts)}</td>
                        <td>
                          <Button
                            variant="subtle"
                            aria-expanded={isShown}
                            aria-label={
                              isShown
                                ? words.hideOf(kind, name)
                                : words.movementsBehind(words.movements(figure.movements), kind, name)
                            }
                            onClick={() => setShown(isShown ? undefined : figure.kind)}
                          >
                            {isShown ? words.hide : words.movements(figure.movements)}
                          </Button>
                        </td>
                      </tr>
                      {isShown && (
                        <tr>
                          <td colSpan={3}>
                            <Movements
                              studioId={studioId}
                              recallId={recallId}
                              lotId={lot.lotId}
                              kind={figure.kind}
                              label={words.movementsOf(kind, name)}
                            />
                          </td>
                        </tr>
                      )}
                    </Fragment>
                  );
                })}
              <tr>
                <th scope="row">{words.onHand}</th>
                <td>{writtenAmount(onHand, texts)}</td>
                <td />
              </tr>
              <tr>
                <th scope="row">{words.notAccounted}</th>
                <td>{writtenAmount(notAccounted, texts)}</td>
                <td />
              </tr>
            </tbody>
          </table>
        </div>
      }
    >
      {unexplained.length === 0 && <p>{words.nothingOpen}</p>}
      {unexplained.map(({ reason, ...amount }) => (
        <p key={reason}>{words.reason(writtenAmount(amount, texts), words.reasons[reason])}</p>
      ))}
      {reachedThroughBlends.shareMicrolitres > 0 && (
        <p>{words.throughBlends(writtenVolume(reachedThroughBlends.shareMicrolitres, texts.language))}</p>
      )}
      {lot.otherEnds.map(({ direction, studioName, state, lotId, ...amount }) => (
        <p key={`${direction} ${studioName} ${state} ${lotId}`}>
          {words[direction](studioName, writtenAmount(amount, texts), words.states[state])}
        </p>
      ))}
    </Entry>
  );
}

function Movements({
  studioId,
  recallId,
  lotId,
  kind,
  label,
}: {
  studioId: string;
  recallId: string;
  lotId: string;
  kind: BalanceFigure;
  label: string;
}) {
  const texts = useTexts();
  const when = useStudioInstants(studioId);
  const list = usePages(['movements of balance', studioId, recallId, lotId, kind], (after) =>
    listMovementsBehind(studioId, recallId, lotId, kind, after),
  );
  return (
    <PagedEntries
      label={label}
      list={list}
      none={texts.recallBalance.noMovements}
      entry={(movement) => (
        <Entry
          key={movement.id}
          name={`${texts.movementKinds[movement.kind] ?? movement.kind} ${writtenChange(movement, texts)}`}
        >
          <p>
            {[when(movement.occurredAt), ...(movement.reason === null ? [] : [movement.reason])].join(', ')}
          </p>
          {movement.sessionId !== null && (
            <PageLink alone to={pathOf({ studioId, area: 'records' }, 'sessions', movement.sessionId)}>
              {texts.history.toSession}
            </PageLink>
          )}
        </Entry>
      )}
    />
  );
}
