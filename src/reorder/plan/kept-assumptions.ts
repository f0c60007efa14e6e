import type { ComputedItem } from './item-line.js';

/** Something that was supposed, with its figures. */
export interface KeptAssumption {
  code: string;
  figures: Record<string, unknown>;
}

/** All that was supposed of one item, each once: of its supply, of its demand, and when it was decided on. */
export function keptAssumptions(
  { demandAssumptions, decision }: Pick<ComputedItem, 'demandAssumptions' | 'decision'>,
  ofSupply: readonly KeptAssumption[],
): KeptAssumption[] {
  const all: KeptAssumption[] = [
    ...ofSupply,
    ...demandAssumptions.map(({ code, figures }) => ({ code, figures: { ...figures } })),
    ...decision.assumptions.map(({ code, ...figures }) => ({ code, figures })),
  ];
  return [...new Map(all.map((each) => [JSON.stringify(each), each])).values()];
}
