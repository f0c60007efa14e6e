import type { ContainerView } from '../../../stock/container-list.views.js';
import { hasEnded } from '../../../stock/container-transitions.js';
import type { NearDays } from '../ends-soon.js';
import type { Standing } from '../sign.js';

export type Condition =
  | 'finished'
  | 'discarded'
  | 'recalled'
  | 'on hold'
  | 'practice only'
  | 'expired'
  | 'open too long'
  | 'no date known'
  | 'ends soon'
  | 'usable';

const standings: Record<Condition, Standing> = {
  finished: 'over',
  discarded: 'over',
  recalled: 'fault',
  'on hold': 'fault',
  'practice only': 'over',
  expired: 'fault',
  'open too long': 'fault',
  'no date known': 'care',
  'ends soon': 'care',
  usable: 'good',
};

/** The one thing that is to be known first of a container; as a refusal names its worst reason. */
export function containerCondition(
  { state, holds, life, openedAt }: Pick<ContainerView, 'state' | 'holds' | 'life' | 'openedAt'>,
  { useByNearDays, openedLifeEndingDays }: NearDays,
): { condition: Condition; standing: Standing } {
  const judge = (): Condition => {
    if (hasEnded(state)) return state;
    if (holds.some(({ kind }) => kind === 'recall')) return 'recalled';
    if (holds.length > 0) return 'on hold';
    if (state === 'practice only') return state;
    if (life.status !== 'usable') return life.status;
    const near = openedAt === null ? useByNearDays : openedLifeEndingDays;
    return life.daysLeft !== null && life.daysLeft <= near ? 'ends soon' : 'usable';
  };
  const condition = judge();
  return { condition, standing: standings[condition] };
}
