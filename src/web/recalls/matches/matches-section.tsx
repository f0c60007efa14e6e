import { Note } from '../../frame/note.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { Figures } from '../../stock/figures.js';
import { useTexts } from '../../texts/texts.js';
import { MatchedLots, type PossibleChoice } from './matched-lots.js';
import styles from './matches.module.css';
import type { Matches } from './use-matches.js';

/** What is here of what is recalled, before anything is done. */
export function MatchesSection({
  found: { matches, isCurrent, problem },
  isAsked,
  choice,
}: {
  found: Matches;
  /** Whether there is anything to look for. */
  isAsked: boolean;
  choice?: PossibleChoice | undefined;
}) {
  const texts = useTexts();
  const words = texts.matches;
  const sum = (of: 'onHandPieces' | 'containers') =>
    (matches?.items ?? []).reduce((total, lot) => total + lot[of], 0);
  const none = matches && matches.certainLots + matches.possibleLots === 0;
  return (
    <Section title={words.title} hint={words.hint}>
      <p role="status" className={styles.asking}>
        {!isAsked && texts.scope.nothingYet}
        {isAsked && !isCurrent && !problem && words.looking}
        {isAsked &&
          isCurrent &&
          matches &&
          (none ? words.none : words.found(matches.certainLots, matches.possibleLots))}
      </p>
      <ProblemNote problem={problem} />
      {isAsked && matches && (
        <div aria-busy={!isCurrent}>
          {none ? (
            <Note kind="plain">
              <p>{words.noneHint}</p>
            </Note>
          ) : (
            <>
              <Figures
                figures={[
                  { name: words.figures.certain, value: matches.certainLots, isMain: true },
                  { name: words.figures.possible, value: matches.possibleLots },
                  { name: words.figures.containers, value: sum('containers') },
                  { name: words.figures.pieces, value: sum('onHandPieces') },
                ]}
              />
              <MatchedLots
                grade="certain"
                count={matches.certainLots}
                lots={matches.items.filter(({ grade }) => grade === 'certain')}
              />
              <MatchedLots
                grade="possible"
                count={matches.possibleLots}
                lots={matches.items.filter(({ grade }) => grade === 'possible')}
                choice={choice}
              />
            </>
          )}
        </div>
      )}
    </Section>
  );
}
