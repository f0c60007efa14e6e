import { Button, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { ConfigurationView } from '../../../catalogue/configurations.views.js';
import type { KitItemView, KitListView } from '../../../sessions/kit-lists.views.js';
import { ProductSearch } from '../../catalogue/product-search.js';
import { wordsOfProduct } from '../../catalogue/product-words.js';
import { Choice } from '../../frame/choice.js';
import { Fields } from '../../frame/fields.js';
import { Note } from '../../frame/note.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { isProblem, type ServiceProblem } from '../../service/problem.js';
import { readAnewIfStale } from '../../service/read-anew-if-stale.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { putKitList } from '../settings.requests.js';
import { nameOfPool, wordsOfItem } from './kit-item.js';
import { KitListLines } from './kit-list-lines.js';
import styles from './procedures.module.css';

/** One line as it is written: the pieces as they were typed. */
type Line = Omit<KitItemView, 'quantity'> & { pieces: string };

interface Written {
  lines: Line[];
  /** Of the list from which writing began, which may be read anew meanwhile unseen; undefined: the one that is shown. */
  version: number | null | undefined;
}

/**
 * Changes a kit list, which is saved whole. What somebody else made of it meanwhile is shown beside what was written here;
 * saving again puts the latter in its place.
 */
export function KitListForm({
  studioId,
  procedureId,
  artistId,
  label,
  saved,
  version,
  pools,
  reload,
}: {
  studioId: string;
  procedureId: string;
  artistId: string | null;
  label: string;
  saved: KitListView;
  /** Null: this list is not made yet. */
  version: number | null;
  pools: readonly ConfigurationView[];
  reload: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.procedures;
  const [written, setWritten] = useState<Written>();
  const [isSaved, setSaved] = useState(false);
  const lines = written?.lines ?? linesOf(saved);
  const begunFrom = written?.version === undefined ? version : written.version;
  const ids = useRef(new RequestIds()).current;
  const change = (changed: Line[]) => {
    setSaved(false);
    setWritten({ lines: changed, version: written === undefined ? version : written.version });
  };
  const { run, busy, problem } = useAction(async () => {
    const content = {
      artistId,
      items: lines.map(({ productId, configuration, pieces }) => ({
        ...(productId !== null && { productId }),
        ...(configuration !== null && { configuration }),
        quantity: Number(pieces),
      })),
      ...(begunFrom !== null && { version: begunFrom }),
    };
    await readAnewIfStale(
      () => putKitList(studioId, procedureId, { id: ids.for(content), ...content }),
      async () => {
        await reload();
        // What was typed meanwhile stays.
        setWritten((now) => ({ lines: now?.lines ?? lines, version: undefined }));
      },
    );
    ids.renew();
    await reload();
    setWritten(undefined);
    setSaved(true);
  });
  const add = (line: Omit<Line, 'pieces'>) => change([...lines, { ...line, pieces: '1' }]);
  const offered = pools.filter(
    ({ keys }) => keys.length > 0 && !lines.some(({ configuration }) => keys.includes(configuration ?? '')),
  );
  return (
    <Fields onSubmit={() => void run()} label={label}>
      {lines.length === 0 && <p>{words.emptyList}</p>}
      <ul className={styles.lines} aria-label={label}>
        {lines.map((line, index) => (
          <li key={line.productId ?? line.configuration} className={styles.line}>
            <span>{wordsOfItem(line, pools, texts)}</span>
            <TextInput
              className={styles.pieces ?? ''}
              label={words.pieces}
              aria-label={words.piecesOf(wordsOfItem(line, pools, texts))}
              type="number"
              inputMode="numeric"
              min={1}
              max={100}
              step={1}
              required
              value={line.pieces}
              error={faultAt(problem, index)}
              onChange={({ currentTarget: { value } }) =>
                change(lines.map((each) => (each === line ? { ...line, pieces: value } : each)))
              }
            />
            <Button
              variant="default"
              disabled={index === 0}
              aria-label={words.upOf(wordsOfItem(line, pools, texts))}
              onClick={() => change(oneUp(lines, index))}
            >
              ↑
            </Button>
            <Button
              variant="default"
              aria-label={words.removeOf(wordsOfItem(line, pools, texts))}
              onClick={() => change(lines.filter((each) => each !== line))}
            >
              {words.remove}
            </Button>
          </li>
        ))}
      </ul>
      <ProductSearch
        studioId={studioId}
        label={words.addProduct}
        isOffered={({ id }) => !lines.some(({ productId }) => productId === id)}
        onChosen={(product) =>
          add({ productId: product.id, productName: wordsOfProduct(product), configuration: null })
        }
      />
      {offered.length > 0 && (
        <Choice
          label={words.addConfiguration}
          description={words.addConfigurationHint}
          value=""
          none={words.choose}
          choices={offered.map((pool) => ({ value: pool.keys[0] ?? '', label: nameOfPool(pool) }))}
          onChange={(configuration) =>
            configuration !== '' && add({ productId: null, productName: null, configuration })
          }
        />
      )}
      {problem && isProblem(problem, 'stale-version') ? (
        <Note kind="fault">
          <p>{words.staleList}</p>
          <KitListLines items={saved.items} pools={pools} />
          <Button variant="default" onClick={() => setWritten(undefined)}>
            {words.takeTheirs}
          </Button>
        </Note>
      ) : (
        <ProblemNote problem={problem} />
      )}
      {isSaved && (
        <Note kind="good">
          <p>{texts.settings.saved}</p>
        </Note>
      )}
      <div>
        <Button type="submit" loading={busy} disabled={written === undefined}>
          {texts.app.save}
        </Button>
      </div>
    </Fields>
  );
}

function linesOf({ items }: KitListView): Line[] {
  return items.map(({ quantity, ...item }) => ({ ...item, pieces: String(quantity) }));
}

function oneUp(lines: readonly Line[], index: number): Line[] {
  const before = lines.slice(0, index - 1);
  return [
    ...before,
    ...lines.slice(index, index + 1),
    ...lines.slice(index - 1, index),
    ...lines.slice(index + 1),
  ];
}

/** A fault stands at the line it is about. */
function faultAt(problem: ServiceProblem | undefined, index: number): string | undefined {
  const at = `items.${index}`;
  return (
    problem?.faultOf(at) ?? problem?.faultOf(`${at}.quantity`) ?? problem?.faultOf(`${at}.configuration`)
  );
}
