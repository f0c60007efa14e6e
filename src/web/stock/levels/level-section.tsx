import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Entries } from '../../frame/entries.js';
import { MoreButton } from '../../frame/more-button.js';
import { Section } from '../../frame/section.js';
import { useTexts } from '../../texts/texts.js';
import type { NearDays } from '../ends-soon.js';
import { useShown } from '../use-shown.js';
import { LevelEntry } from './level-entry.js';
import type { LevelRow, LevelRows } from './level-rows.js';

/** The levels of one kind of thing. */
export function LevelSection({
  standing,
  kind,
  rows,
  today,
  near,
  onChanged,
}: {
  standing: StandingView;
  kind: keyof LevelRows;
  rows: readonly LevelRow[];
  today: string;
  near: NearDays;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const list = useShown(rows);
  return (
    <Section title={texts.levels.kinds[kind]} hint={texts.levels.kindHints[kind]}>
      <Entries label={texts.levels.kinds[kind]}>
        {list.shown.map((row) => (
          <LevelEntry
            key={`${row.subjectKind} ${row.subjectId}`}
            standing={standing}
            row={row}
            today={today}
            near={near}
            onChanged={onChanged}
          />
        ))}
      </Entries>
      <MoreButton list={list} />
    </Section>
  );
}
