/** Of the containers of a lot, the one that was most likely in hand: open ones first, those that are gone last. */
const likeliestStates = ['opened', 'sealed', 'practice only', 'finished', 'discarded'] as const;

export interface ContainerOfLot {
  containerId: string;
  lotId: string;
  state: (typeof likeliestStates)[number];
}

/**
 * The container of each lot that a use told afterwards is booked on, when only the lot is known. Of several in the same
 * state it is the first given.
 *
 * @returns container ids by lot id; a lot without containers is absent
 */
export function likeliestContainers(containers: readonly ContainerOfLot[]): Map<string, string> {
  const likeliest = new Map<string, ContainerOfLot>();
  for (const container of containers) {
    const best = likeliest.get(container.lotId);
    if (!best || rank(container) < rank(best)) likeliest.set(container.lotId, container);
  }
  return new Map([...likeliest].map(([lotId, { containerId }]) => [lotId, containerId]));
}

function rank({ state }: ContainerOfLot): number {
  return likeliestStates.indexOf(state);
}
