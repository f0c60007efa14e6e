import { useRef, useState } from 'react';
import { isProblem, type ServiceProblem } from '../service/problem.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';

interface TakingIn<Preview, Taken> {
  text: string;
  /** Another text: what was said of the one before does not hold for it. */
  bring(text: string): void;
  /** What was chosen for all rows changed: the preview is to be asked for again. */
  doubt(): void;
  look(): void;
  takeIn(): void;
  preview: Preview | undefined;
  taken: Taken | undefined;
  /** Whether what the preview said did not hold any more when it was to be taken in. */
  changed: boolean;
  isLooking: boolean;
  isTakingIn: boolean;
  problem: ServiceProblem | undefined;
}

/**
 * A file on its way in: brought, looked over, taken in. Sent again after a failure it has the same id, so that nothing is
 * taken in twice. What was brought stays until it is taken in.
 */
export function useTakingIn<Preview extends object, Taken extends object>(
  ask: (text: string) => Promise<Preview>,
  /** @param id of the write */
  send: (id: string, text: string) => Promise<Taken>,
  /** All that is sent, by which a repeated write is known. */
  contentOf: (text: string) => object,
): TakingIn<Preview, Taken> {
  const [text, setText] = useState('');
  const [preview, setPreview] = useState<Preview>();
  const [taken, setTaken] = useState<Taken>();
  const [changed, setChanged] = useState(false);
  const ids = useRef(new RequestIds()).current;
  const looking = useAction(async () => {
    setChanged(false);
    setPreview(await ask(text));
  });
  const sending = useAction(async () => {
    try {
      const answer = await send(ids.for(contentOf(text)), text);
      ids.renew();
      setTaken(answer);
      setPreview(undefined);
      setText('');
    } catch (error) {
      if (!isProblem(error, 'unusable-file')) throw error;
      setPreview(await ask(text));
      setChanged(true);
    }
  });
  return {
    text,
    bring(brought) {
      setText(brought);
      setPreview(undefined);
      setTaken(undefined);
      setChanged(false);
    },
    doubt: () => setPreview(undefined),
    look: () => void looking.run(),
    takeIn: () => void sending.run(),
    preview,
    taken,
    changed,
    isLooking: looking.busy,
    isTakingIn: sending.busy,
    problem: looking.problem ?? sending.problem,
  };
}
