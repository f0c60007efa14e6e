import { Button, Checkbox } from '@mantine/core';
import { useRef, useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { LevelTakenView, PlanLineSummaryView } from '../../../reorder/plan/plans.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import { Fields } from '../../frame/fields.js';
import { PageLink } from '../../frame/navigation.js';
import { NoSuchPage } from '../../frame/no-such-page.js';
import { Note } from '../../frame/note.js';
import { Page } from '../../frame/page.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { isProblem } from '../../service/problem.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { allPlanLines } from '../plans.requests.js';
import { levelChanges } from './level-changes.js';
import { takeLevels } from './take-levels.js';

/** Takes a plan's reorder points for the minima of the stock: those set by hand stay, unless they are ticked. */
export function PlanLevelsPage({ standing, id }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  const words = texts.planLevels;
  const { studioId, studioName } = standing;
  const lines = useAnswer(['plan lines', studioId, id, 'all'], () => allPlanLines(studioId, id));
  const [taken, setTaken] = useState<LevelTakenView[]>();
  if (isProblem(lines.problem, 'not-found')) return <NoSuchPage />;
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <ProblemNote problem={lines.problem} />
      {!lines.answer && !lines.problem && <p role="status">{texts.app.loading}</p>}
      {taken && <TakenPart taken={taken} />}
      {!taken && lines.answer && (
        <TakeForm studioId={studioId} planId={id} lines={lines.answer} onTaken={setTaken} />
      )}
      <PageLink to={pathOf({ studioId, area: 'stock' }, 'levels')} alone>
        {words.toLevels}
      </PageLink>
    </Page>
  );
}

function TakeForm({
  studioId,
  planId,
  lines,
  onTaken,
}: {
  studioId: string;
  planId: string;
  lines: readonly PlanLineSummaryView[];
  onTaken: (taken: LevelTakenView[]) => void;
}) {
  const texts = useTexts();
  const words = texts.planLevels;
  const ids = { all: useRef(new RequestIds()).current, ticked: useRef(new RequestIds()).current };
  const [ticked, setTicked] = useState<ReadonlySet<number>>(new Set());
  const { free, byHand } = levelChanges(lines);
  const { run, busy, problem } = useAction(async () => {
    onTaken(await takeLevels({ studioId, planId, all: free.length > 0, ticked: [...ticked], ids }));
  });
  if (free.length + byHand.length === 0) return <p role="status">{words.nothing}</p>;
  const change = ({ level }: PlanLineSummaryView) =>
    words.change(level.currentPieces, level.minimumPieces ?? 0);
  return (
    <Fields onSubmit={() => void run()} label={words.title}>
      {free.length > 0 && (
        <Section title={words.free} hint={words.freeHint}>
          <Entries label={words.free}>
            {free.map((line) => (
              <Entry key={line.lineNumber} name={line.item.label}>
                <p>{change(line)}</p>
              </Entry>
            ))}
          </Entries>
        </Section>
      )}
      {byHand.length > 0 && (
        <Section title={words.byHand} hint={words.byHandHint}>
          <Entries label={words.byHand}>
            {byHand.map((line) => (
              <Entry
                key={line.lineNumber}
                name={
                  <Checkbox
                    label={line.item.label}
                    description={change(line)}
                    checked={ticked.has(line.lineNumber)}
                    onChange={({ currentTarget: { checked } }) =>
                      setTicked((before) => {
                        const after = new Set(before);
                        if (checked) after.add(line.lineNumber);
                        else after.delete(line.lineNumber);
                        return after;
                      })
                    }
                  />
                }
              />
            ))}
          </Entries>
        </Section>
      )}
      <ProblemNote problem={problem} />
      <div>
        <Button type="submit" loading={busy} disabled={free.length + ticked.size === 0}>
          {words.take(free.length + ticked.size)}
        </Button>
      </div>
    </Fields>
  );
}

function TakenPart({ taken }: { taken: readonly LevelTakenView[] }) {
  const words = useTexts().planLevels;
  const set = taken.filter(({ outcome }) => outcome === 'set');
  return (
    <Section title={words.done}>
      <Note kind="good">
        <p>{words.wereSet(set.length)}</p>
      </Note>
      {set.length > 0 && (
        <Entries label={words.done}>
          {set.map((one) => (
            <Entry key={one.lineNumber} name={one.label}>
              <p>{words.change(one.before, one.after)}</p>
            </Entry>
          ))}
        </Entries>
      )}
    </Section>
  );
}
