import { Button } from '@mantine/core';
import { useState } from 'react';
import { Section } from '../frame/section.js';
import { useTexts } from '../texts/texts.js';
import { tellsLive } from './live-answer.js';

/** Pages that stand open, which need no setting; only whether the way there works can be asked. */
export function LiveSection({ studioId }: { studioId: string }) {
  const words = useTexts().told;
  const [answers, setAnswers] = useState<boolean | 'asking'>();
  const test = async () => {
    setAnswers('asking');
    setAnswers(await tellsLive(studioId));
  };
  return (
    <Section title={words.openPages} hint={words.openPagesHint}>
      <p role="status">
        {answers === true && words.tellsLive}
        {answers === false && words.tellsNothingLive}
      </p>
      <Button variant="default" loading={answers === 'asking'} onClick={() => void test()}>
        {words.testLive}
      </Button>
    </Section>
  );
}
