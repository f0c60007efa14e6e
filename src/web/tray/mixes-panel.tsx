import { Button } from '@mantine/core';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useTexts } from '../texts/texts.js';
import type { LaidThing } from './laid-things.js';
import { MixCup } from './mix-cup.js';
import styles from './mixes-panel.module.css';
import type { useMixes } from './use-mixes.js';

/** The cups of this session: which one is dropped into now, and a large button for each bottle on the tray. */
export function MixesPanel({
  mixes,
  things,
  chosenId,
  works,
  onChoose,
}: {
  mixes: ReturnType<typeof useMixes>;
  things: readonly LaidThing[];
  chosenId: string | undefined;
  works: boolean;
  onChoose: (mixId: string) => void;
}) {
  const texts = useTexts();
  const shown = mixes.mixes ?? [];
  const chosen = shown.find(({ id }) => id === chosenId) ?? shown.at(-1);
  const bottles = things.filter(({ isPigment }) => isPigment);
  /** A second press begins no second empty cup. */
  const begin = () => {
    const empty = shown.find(({ parts }) => parts.every(({ drops }) => drops === 0));
    onChoose(empty?.id ?? mixes.begin(texts.tray.mixNumber(shown.length + 1)));
  };
  return (
    <div className={styles.mixes}>
      {mixes.waiting > 0 && !mixes.busy && (
        <Note kind="fault">
          <p>{texts.tray.pressesWait(mixes.waiting)}</p>
          <Button size="xl" variant="default" mt="sm" onClick={mixes.sendAgain}>
            {texts.tray.sendAgain}
          </Button>
        </Note>
      )}
      <ProblemNote problem={mixes.problem} />
      {mixes.mixes === undefined && mixes.problem === undefined && <p role="status">{texts.app.loading}</p>}
      {mixes.mixes && (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset would be read out as a form.
        <div className={styles.cups} role="group" aria-label={texts.tray.mixes}>
          {shown.map(({ id, label }) => (
            <Button
              key={id}
              size="xl"
              variant="default"
              className={styles.cup}
              aria-pressed={id === chosen?.id}
              onClick={() => onChoose(id)}
            >
              {label}
            </Button>
          ))}
          {works && (
            <Button size="xl" variant={shown.length === 0 ? 'filled' : 'default'} onClick={begin}>
              {texts.tray.newMix}
            </Button>
          )}
        </div>
      )}
      {mixes.mixes && bottles.length === 0 && <p>{texts.tray.noBottles}</p>}
      {chosen && (
        <MixCup
          key={chosen.id}
          mix={chosen}
          bottles={bottles}
          warning={mixes.warning}
          works={works}
          onDrop={(containerId, drops) => mixes.drop(chosen.id, { containerId, drops })}
        />
      )}
    </div>
  );
}
