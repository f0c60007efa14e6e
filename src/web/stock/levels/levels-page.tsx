import { Group, TextInput } from '@mantine/core';
import { useState } from 'react';
import { useSearchParams } from 'react-router';
import { localDay } from '../../../identity/local-day.js';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Choice } from '../../frame/choice.js';
import { Page } from '../../frame/page.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { useConfigurations, useStudio } from '../../service/studio-answers.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { FindField } from '../find/find-field.js';
import { isLookedFor, type LevelFilter, levelFilters } from './level-filter.js';
import { levelRows } from './level-rows.js';
import { LevelSection } from './level-section.js';
import { showLevels } from './levels.requests.js';

const kinds = ['pigments', 'cartridges', 'consumables'] as const;

/** How much is here of each shade and configuration, and what is running low. */
export function LevelsPage({ standing }: { standing: StandingView }) {
  const [parameters] = useSearchParams();
  const text = parameters.get('text') ?? '';
  return <SearchedLevels key={text} standing={standing} searched={text} />;
}

function SearchedLevels({ standing, searched }: { standing: StandingView; searched: string }) {
  const texts = useTexts();
  const { studioId, studioName } = standing;
  const studio = useStudio(studioId);
  const levels = useAnswer(['levels', studioId], () => showLevels(studioId));
  const configurations = useConfigurations(studioId);
  const [text, setText] = useState(searched);
  const [filter, setFilter] = useState<LevelFilter | ''>('');
  const problem = levels.problem ?? configurations.problem ?? studio.problem;
  const near = studio.answer;
  const today = near && localDay(new Date().toISOString(), near.timeZone);
  const rows = levels.answer && configurations.answer && levelRows(levels.answer, configurations.answer);
  const sections =
    near && today !== undefined && rows
      ? kinds.map((kind) => ({
          ...{ kind, today, near, all: rows[kind].length },
          found: rows[kind].filter((row) =>
            isLookedFor(row, { text, filter: filter === '' ? null : filter }),
          ),
        }))
      : undefined;
  return (
    <>
      <FindField studioId={studioId} />
      <Page above={studioName} title={texts.levels.title} lead={texts.levels.lead}>
        <ProblemNote problem={problem} />
        {!sections && problem === undefined && <p role="status">{texts.app.loading}</p>}
        {sections && (
          <>
            <Group gap="md" align="flex-end" mb="xl">
              <TextInput
                label={texts.levels.search}
                type="search"
                autoComplete="off"
                maxLength={100}
                value={text}
                onChange={(event) => setText(event.currentTarget.value)}
              />
              <Choice
                label={texts.levels.filter}
                value={filter}
                none={texts.levels.everything}
                choices={levelFilters.map((one) => ({ value: one, label: texts.levels.filters[one] }))}
                onChange={setFilter}
              />
            </Group>
            {sections.every(({ all }) => all === 0) && <p>{texts.levels.nothingAtAll}</p>}
            {sections.some(({ all }) => all > 0) && sections.every(({ found }) => found.length === 0) && (
              <p role="status">{texts.levels.nothingFound}</p>
            )}
            {sections
              .filter(({ found }) => found.length > 0)
              .map(({ kind, found, ...others }) => (
                <LevelSection
                  key={`${kind} ${text} ${filter}`}
                  standing={standing}
                  kind={kind}
                  rows={found}
                  today={others.today}
                  near={others.near}
                  onChanged={levels.reload}
                />
              ))}
          </>
        )}
      </Page>
    </>
  );
}
