import { useEffect, useRef, useState } from 'react';
import { useTexts } from '../texts/texts.js';
import type { Decoder } from './decoder.js';
import styles from './scanner.module.css';
import { look, nothingShown } from './showings.js';
import { watch } from './watch.js';

/** After so long in the picture a symbol that was handed on is told to be known. */
const staysMilliseconds = 2_500;

/** What the camera sees. Each symbol that is shown to it is handed on once. */
export function CameraPicture({
  stream,
  decoder,
  onShown,
  onFailed,
}: {
  stream: MediaStream;
  decoder: Decoder;
  /** With its symbology identifier in front. */
  onShown: (symbol: string) => void;
  /** The reader of symbols cannot be loaded. */
  onFailed: () => void;
}) {
  const texts = useTexts();
  const video = useRef<HTMLVideoElement>(null);
  const [seen, setSeen] = useState<'loading' | 'nothing' | 'read' | 'stays'>('loading');
  const listeners = useRef({ onShown, onFailed });
  listeners.current = { onShown, onFailed };
  useEffect(() => {
    const element = video.current;
    if (!element) return;
    const ending = new AbortController();
    let before = nothingShown;
    // Until the reader has answered once it is being loaded, which takes a while over a weak network.
    setSeen('loading');
    let lastShownAt = 0;
    element.srcObject = stream;
    // It is stopped again before it plays, at times; then there is nothing to be said.
    element.play().catch(() => undefined);
    watch(element, decoder, ending.signal, (symbols, at) => {
      const { showings, shown } = look(before, symbols, at);
      before = showings;
      if (shown.length > 0) lastShownAt = at;
      for (const symbol of shown) listeners.current.onShown(symbol);
      const known = at - lastShownAt > staysMilliseconds ? 'stays' : 'read';
      setSeen(showings.size === 0 ? 'nothing' : known);
    }).catch(() => {
      if (!ending.signal.aborted) listeners.current.onFailed();
    });
    return () => {
      ending.abort();
      element.srcObject = null;
    };
  }, [stream, decoder]);
  return (
    <>
      <video
        ref={video}
        className={styles.picture}
        data-seen={seen}
        muted
        playsInline
        aria-label={texts.scanner.picture}
      />
      <p className={styles.seen}>{texts.scanner.seen[seen]}</p>
    </>
  );
}
