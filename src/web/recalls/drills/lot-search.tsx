import { Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import { Fields } from '../../frame/fields.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { useAction } from '../../service/use-action.js';
import { nameOf } from '../../stock/amounts.js';
import { listLots } from '../../stock/lots/lots.requests.js';
import { useTexts } from '../../texts/texts.js';
import styles from '../recalls.module.css';

export interface LotChosen {
  id: string;
  name: string;
}

/** Finds a lot by its code. */
export function LotSearch({
  studioId,
  chosen,
  onChosen,
}: {
  studioId: string;
  chosen: LotChosen | undefined;
  onChosen: (lot: LotChosen) => void;
}) {
  const words = useTexts().drills;
  const [code, setCode] = useState('');
  const [found, setFound] = useState<LotChosen[]>();
  const { run, busy, problem } = useAction(async () => {
    const { items } = await listLots(studioId, { code: code.trim() }, undefined);
    setFound(items.map((lot) => ({ id: lot.id, name: `${nameOf(lot)}, ${lot.code ?? ''}` })));
  });
  return (
    <div className={styles.search}>
      <Fields onSubmit={() => void run()} label={words.findLot}>
        <div className={styles.pair}>
          <TextInput
            label={words.lotCode}
            required
            maxLength={60}
            autoComplete="off"
            spellCheck={false}
            value={code}
            onChange={(event) => setCode(event.currentTarget.value)}
          />
          <Button type="submit" variant="default" loading={busy}>
            {words.find}
          </Button>
        </div>
      </Fields>
      <ProblemNote problem={problem} />
      {found?.length === 0 && <p role="status">{words.noSuchLot}</p>}
      {found && found.length > 0 && (
        <ul className={styles.found} aria-label={words.foundLots}>
          {found.map((lot) => (
            <li key={lot.id}>
              <Button
                variant={lot.id === chosen?.id ? 'filled' : 'default'}
                fullWidth
                aria-pressed={lot.id === chosen?.id}
                onClick={() => onChosen(lot)}
              >
                {lot.name}
              </Button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
