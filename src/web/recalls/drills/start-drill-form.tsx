import { Button, Checkbox, Radio, Stack } from '@mantine/core';
import { useRef, useState } from 'react';
import { useNavigate } from 'react-router';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Fields } from '../../frame/fields.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useForgetAnswers } from '../../service/use-forget-answers.js';
import { useRequester } from '../../sign-in/requester.js';
import { useTexts } from '../../texts/texts.js';
import { startDrill } from './drills.requests.js';
import { type LotChosen, LotSearch } from './lot-search.js';

/** Begins a drill on a lot that is drawn, or on one that is chosen. */
export function StartDrillForm({ standing: { studioId, permissions } }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.drills;
  const open = useNavigate();
  const forget = useForgetAnswers();
  const { studios } = useRequester();
  const ids = useRef(new RequestIds()).current;
  const [by, setBy] = useState<'random' | 'lot'>('random');
  const [lot, setLot] = useState<LotChosen>();
  const [wholeChain, setWholeChain] = useState(false);
  const { run, busy, problem } = useAction(async () => {
    if (by === 'lot' && !lot) return;
    const content = {
      ...(by === 'lot' && lot ? { lotId: lot.id } : { random: true as const }),
      ...(wholeChain && { wholeChain }),
    };
    const { recallId } = await startDrill(studioId, { id: ids.for(content), ...content });
    ids.renew();
    void open(pathOf({ studioId, area: 'recalls' }, recallId));
    await forget();
  });
  return (
    <>
      <Radio.Group
        label={words.on}
        value={by}
        mb="lg"
        onChange={(value) => setBy(value === 'lot' ? 'lot' : 'random')}
      >
        <Stack gap="xs" mt="xs">
          <Radio value="random" label={words.random} description={words.randomHint} />
          <Radio value="lot" label={words.chosenLot} />
        </Stack>
      </Radio.Group>
      {by === 'lot' && <LotSearch studioId={studioId} chosen={lot} onChosen={setLot} />}
      <Fields onSubmit={() => void run()} label={words.start}>
        {studios.length > 1 && permissions.includes('answer recalls of the chain') && (
          <Checkbox
            label={words.wholeChain}
            checked={wholeChain}
            onChange={(event) => setWholeChain(event.currentTarget.checked)}
          />
        )}
        <ProblemNote problem={problem} />
        <div>
          <Button type="submit" loading={busy} disabled={by === 'lot' && lot === undefined}>
            {words.begin}
          </Button>
        </div>
      </Fields>
    </>
  );
}
