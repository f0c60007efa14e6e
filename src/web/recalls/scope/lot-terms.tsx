import { Button } from '@mantine/core';
import { useState } from 'react';
import { MoreButton } from '../../frame/more-button.js';
import { useShown } from '../../stock/use-shown.js';
import { useTexts } from '../../texts/texts.js';
import { LotTermForm } from './lot-term-form.js';
import styles from './scope.module.css';
import { newTerms, type TermDraft } from './scope-draft.js';
import { writtenTerm } from './written-scope.js';

/** The lots of one product of a scope: each can be shown where it was read, changed and taken away. */
export function LotTerms({
  lots,
  onChanged,
  onShow,
}: {
  lots: readonly TermDraft[];
  onChanged: (lots: TermDraft[]) => void;
  /** Left out: there is no text to show them in. */
  onShow?: ((part: number) => void) | undefined;
}) {
  const texts = useTexts();
  const words = texts.scope;
  const [adding, setAdding] = useState(false);
  const [changing, setChanging] = useState<string>();
  const list = useShown(lots);
  return (
    <div>
      <h3 className={styles.heading}>{words.lots}</h3>
      {lots.length === 0 && <p className={styles.hint}>{words.noLots}</p>}
      {lots.length > 0 && (
        <ul className={styles.terms} aria-label={words.lots}>
          {list.shown.map(({ key, term, part }) => {
            const said = writtenTerm(term, texts);
            return (
              <li key={key} className={styles.term}>
                <span className={styles.code}>{said}</span>
                <span className={styles.actions}>
                  {part !== null && onShow && (
                    <Button
                      variant="subtle"
                      px="xs"
                      aria-label={texts.reading.showInTextOf(said)}
                      onClick={() => onShow(part)}
                    >
                      {texts.reading.inText}
                    </Button>
                  )}
                  <Button
                    variant="subtle"
                    px="xs"
                    aria-label={words.changeOf(said)}
                    onClick={() => setChanging(changing === key ? undefined : key)}
                  >
                    {words.change}
                  </Button>
                  <Button
                    variant="subtle"
                    px="xs"
                    aria-label={words.takeAwayOf(said)}
                    onClick={() => onChanged(lots.filter((one) => one.key !== key))}
                  >
                    {words.takeAway}
                  </Button>
                </span>
                {changing === key && (
                  <div>
                    <LotTermForm
                      label={words.changeOf(said)}
                      term={term}
                      onSettled={(terms) => {
                        onChanged(lots.flatMap((one) => (one.key === key ? newTerms(terms) : [one])));
                        setChanging(undefined);
                      }}
                      onCancel={() => setChanging(undefined)}
                    />
                  </div>
                )}
              </li>
            );
          })}
        </ul>
      )}
      <MoreButton list={list} />
      {adding ? (
        <LotTermForm
          label={words.addLots}
          onSettled={(terms) => {
            onChanged([...lots, ...newTerms(terms)]);
            setAdding(false);
          }}
          onCancel={() => setAdding(false)}
        />
      ) : (
        <Button variant="default" onClick={() => setAdding(true)}>
          {words.addLots}
        </Button>
      )}
    </div>
  );
}
