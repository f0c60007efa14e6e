import { useQuery } from '@tanstack/react-query';
import type { AlertDeliveryView } from '../../alerts/alerts.views.js';
import { ServiceProblem } from '../service/problem.js';
import { untilNextLook } from '../service/until-next-look.js';
import { listDeliveriesTo } from './told.requests.js';

/** One delivery to a destination, looked at again and again until it is settled. */
export function useDelivery(
  studioId: string,
  destinationId: string,
  deliveryId: string,
): { delivery: AlertDeliveryView | undefined; problem: ServiceProblem | undefined } {
  const { data, error } = useQuery({
    queryKey: ['delivery to', studioId, destinationId, deliveryId],
    queryFn: async () => {
      const deliveries = await listDeliveriesTo(studioId, destinationId);
      return deliveries.find(({ id }) => id === deliveryId) ?? null;
    },
    refetchInterval: ({ state: { data: known, dataUpdateCount, errorUpdateCount } }) => {
      if (known !== undefined && known?.state !== 'pending') return false;
      return untilNextLook(dataUpdateCount + errorUpdateCount);
    },
  });
  if (error !== null && !(error instanceof ServiceProblem)) throw error;
  return { delivery: data ?? undefined, problem: error ?? undefined };
}
