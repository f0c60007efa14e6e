import { Button } from '@mantine/core';
import { memo, useEffect, useMemo, useRef, useState } from 'react';
import { useTexts } from '../../texts/texts.js';
import styles from './marked-notice.module.css';
import { type Piece, piecesOf } from './marked-text.js';
import type { Mark } from './marks-of.js';

/** So many pieces are drawn at once: a megabyte of lots would hold up the page. */
const drawnAtOnce = 1_500;

/** A mark to be shown; another object, also of the same mark, shows it again. */
export interface MarkToShow {
  mark: number;
}

/**
 * The text of a notice as it came, with what was read marked in it: by a word, by the kind of its line, and by colour. By
 * keys one goes from mark to mark with the buttons above it.
 */
export function MarkedNotice({
  text,
  marks,
  toShow,
}: {
  text: string;
  marks: readonly Mark[];
  toShow: MarkToShow | undefined;
}) {
  const texts = useTexts();
  const words = texts.reading;
  const [opened, setOpened] = useState<ReadonlySet<number>>(new Set());
  const [drawn, setDrawn] = useState(drawnAtOnce);
  const [chosen, setChosen] = useState<number>();
  const [focusing, setFocusing] = useState<MarkToShow>();
  const box = useRef<HTMLElement>(null);
  const pieces = useMemo(
    () =>
      piecesOf(
        text,
        marks.map(({ span }) => span),
        opened,
      ),
    [text, marks, opened],
  );
  /** In the order of the text. */
  const order = useMemo(
    () => pieces.flatMap((piece) => (piece.kind === 'marked' && piece.isFirst ? [piece.mark] : [])),
    [pieces],
  );
  const show = (mark: number) => {
    const place = pieces.findIndex((piece) => piece.kind === 'marked' && piece.mark === mark);
    if (place >= drawn) setDrawn(place + drawnAtOnce);
    setChosen(mark);
    setFocusing({ mark });
  };
  // Once it is drawn.
  useEffect(() => {
    if (focusing) box.current?.querySelector<HTMLElement>(`[data-mark="${focusing.mark}"]`)?.focus();
  }, [focusing]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each time it is asked for, and only then.
  useEffect(() => {
    if (toShow) show(toShow.mark);
  }, [toShow]);
  const place = chosen === undefined ? -1 : order.indexOf(chosen);
  const mark = chosen === undefined ? undefined : marks[chosen];
  const go = (step: number) => {
    const next = order[(place < 0 && step < 0 ? 0 : place + step + order.length) % order.length];
    if (next !== undefined) show(next);
  };
  return (
    <div>
      {order.length > 0 && (
        <div className={styles.bar}>
          <Button variant="default" onClick={() => go(-1)}>
            {words.previous}
          </Button>
          <Button variant="default" onClick={() => go(1)}>
            {words.next}
          </Button>
          <span>{place < 0 ? words.marks(order.length) : words.place(place + 1, order.length)}</span>
        </div>
      )}
      <p className={styles.where} role="status">
        {mark && (mark.kind === null ? words.toLookAt : words.readAs(words.partKinds[mark.kind], mark.value))}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be scrolled by keys too. */}
      <section className={styles.text} aria-label={words.region} tabIndex={0} ref={box}>
        {pieces.slice(0, drawn).map((piece) => (
          <ShownPiece
            key={piece.kind === 'left out' ? `left out ${piece.start}` : piece.start}
            piece={piece}
            mark={piece.kind === 'marked' ? marks[piece.mark] : undefined}
            onChosen={setChosen}
            onOpened={(start) => setOpened((before) => new Set([...before, start]))}
          />
        ))}
        {pieces.length > drawn && (
          <span className={styles.rest}>
            <Button variant="default" onClick={() => setDrawn(drawn + drawnAtOnce)}>
              {words.showMore}
            </Button>
          </span>
        )}
      </section>
    </div>
  );
}

/** Drawn anew only when it is another one: there may be thousands. */
const ShownPiece = memo(
  function ShownPiece({
    piece,
    mark,
    onChosen,
    onOpened,
  }: {
    piece: Piece;
    mark: Mark | undefined;
    onChosen: (mark: number) => void;
    onOpened: (start: number) => void;
  }) {
    const texts = useTexts();
    const words = texts.reading;
    if (piece.kind === 'plain') return piece.text;
    if (piece.kind === 'left out') {
      return (
        <span className={styles.rest}>
          <Button variant="default" onClick={() => onOpened(piece.start)}>
            {words.leftOut(new Intl.NumberFormat(texts.language).format(piece.characters))}
          </Button>
        </span>
      );
    }
    if (mark === undefined) return piece.text;
    return (
      <mark
        className={styles.mark}
        data-group={mark.group}
        tabIndex={-1}
        {...(piece.isFirst && { 'data-mark': piece.mark })}
        onFocus={() => onChosen(piece.mark)}
      >
        {piece.isFirst && (
          <span className={styles.word}>
            {mark.kind === null ? words.toLookAt : words.partKinds[mark.kind]}{' '}
          </span>
        )}
        {piece.text}
      </mark>
    );
  },
  (before, after) => before.piece === after.piece && before.mark === after.mark,
);
