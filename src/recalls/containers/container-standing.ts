export const containerStandings = ['not looked for', 'found', 'not found', 'disposed', 'gone'] as const;

/**
 * How a container of a recall stands. While the book has something left of it, by the latest look for it; afterwards
 * `disposed` when it was returned or destroyed for the recall, else `gone`: used up or thrown away without it.
 */
export type ContainerStanding = (typeof containerStandings)[number];
