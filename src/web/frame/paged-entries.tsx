import type { ReactNode } from 'react';
import type { ServiceProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import { Entries } from './entries.js';
import { MoreButton } from './more-button.js';
import { ProblemNote } from './problem-note.js';

/** A list as far as it was asked for: on its way, empty, refused, or its entries and the way to more of them. */
export function PagedEntries<Item>({
  label,
  list,
  none,
  entry,
}: {
  label: string;
  list: {
    items: readonly Item[] | undefined;
    problem: ServiceProblem | undefined;
    hasMore: boolean;
    isAsking: boolean;
    more(): void;
  };
  /** What is said where there is nothing in it. */
  none: ReactNode;
  entry: (item: Item) => ReactNode;
}) {
  const texts = useTexts();
  const { items, problem } = list;
  return (
    <>
      <ProblemNote problem={problem} />
      {items === undefined && problem === undefined && <p role="status">{texts.app.loading}</p>}
      {items?.length === 0 && <p role="status">{none}</p>}
      {items !== undefined && items.length > 0 && <Entries label={label}>{items.map(entry)}</Entries>}
      <MoreButton list={list} />
    </>
  );
}
