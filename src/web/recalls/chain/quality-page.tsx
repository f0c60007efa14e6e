import { Group, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { RecordQualityView } from '../../../recalls/chain/record-quality.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import { Page } from '../../frame/page.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { request } from '../../service/request.js';
import { useAnswer } from '../../service/use-answer.js';
import { useRequester } from '../../sign-in/requester.js';
import { Figures } from '../../stock/figures.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';

interface Period {
  from: string;
  through: string;
}

/** How well uses are recorded: what a recall would find. */
export function QualityPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.recordQuality;
  const { studioId, studioName, permissions } = standing;
  const { studios } = useRequester();
  const [period, setPeriod] = useState<Period>({ from: '', through: '' });
  const { answer, problem } = useAnswer(['record quality', studioId, period.from, period.through], () =>
    request('GET', '/studios/{studioId}/recalls/record-quality', { studioId, ...asked(period) }),
  );
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Group gap="md" align="flex-end" mb="xl">
        {(['from', 'through'] as const).map((end) => (
          <TextInput
            key={end}
            type="date"
            label={words[end]}
            value={period[end]}
            onChange={(event) => setPeriod({ ...period, [end]: event.currentTarget.value })}
          />
        ))}
      </Group>
      <Section title={words.here} hint={words.hereHint}>
        <ProblemNote problem={problem} />
        {!answer && !problem && <p role="status">{texts.app.loading}</p>}
        {answer && <Quality quality={answer} />}
      </Section>
      {studios.length > 1 && permissions.includes('answer recalls of the chain') && (
        <OfChain studioId={studioId} period={period} />
      )}
    </Page>
  );
}

const asked = ({ from, through }: Period) => ({
  ...(from !== '' && { from }),
  ...(through !== '' && { through }),
});

function OfChain({ studioId, period }: { studioId: string; period: Period }) {
  const texts = useTexts();
  const words = texts.recordQuality;
  const { answer, problem } = useAnswer(
    ['record quality of the chain', studioId, period.from, period.through],
    () => request('GET', '/studios/{studioId}/chain/record-quality', { studioId, ...asked(period) }),
  );
  return (
    <Section title={words.ofChain} hint={words.ofChainHint}>
      <ProblemNote problem={problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {answer && (
        <Entries label={words.ofChain}>
          {answer.studios.map((quality) => (
            <Entry key={quality.studioId} name={quality.studioName}>
              <Quality quality={quality} />
            </Entry>
          ))}
        </Entries>
      )}
    </Section>
  );
}

function Quality({ quality }: { quality: RecordQualityView }) {
  const texts = useTexts();
  const words = texts.recordQuality;
  const percent = new Intl.NumberFormat(texts.language, { style: 'percent', maximumFractionDigits: 1 });
  const share = (count: number, of: number | null) => words.share(percent.format((of ?? 0) / 100), count);
  return (
    <>
      <p>
        {words.uses(
          quality.uses,
          writtenDay(quality.from, texts.language),
          writtenDay(quality.through, texts.language),
        )}
      </p>
      {quality.uses > 0 && (
        <Figures
          figures={[
            { name: words.picked, value: share(quality.picked, quality.pickedPercent), isMain: true },
            { name: words.late, value: share(quality.late, quality.latePercent) },
            { name: words.corrected, value: share(quality.corrected, quality.correctedPercent) },
            {
              name: words.againstRefusal,
              value: share(quality.againstRefusal, quality.againstRefusalPercent),
            },
          ]}
        />
      )}
    </>
  );
}
