import { Button, FileButton } from '@mantine/core';
import { useRef, useState } from 'react';
import type { FileNoticeView, NoticeFileView } from '../../../recalls/notice-files/notice-files.views.js';
import type { NoticeFileKind } from '../../../recalls/notice-files/notice-record.js';
import type { LotScope } from '../../../stock/lot-matching/lot-scope.js';
import { Entries, Entry } from '../../frame/entries.js';
import { Note } from '../../frame/note.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { useAction } from '../../service/use-action.js';
import { Sign } from '../../stock/sign.js';
import { type FileFault, readBroughtFile } from '../../taking-in/brought-file.js';
import { useTexts } from '../../texts/texts.js';
import { readNoticeFile } from '../recalls.requests.js';
import { nameOfItem, writtenLots } from '../scope/written-scope.js';
import { fileKindOf } from './file-kind.js';
import { sortByMet } from './met-notices.js';
import styles from './opening.module.css';
import { saidOf, type TakenNotice } from './taken-notice.js';

/** The service reads four million characters; a file that is longer is refused before it is sent. */
const mostBytes = 3_900_000;

interface ChosenFile {
  name: string;
  kind: NoticeFileKind;
  text: string;
  notices: NoticeFileView;
}

/** A file of notices: those that meet something here come first, and one is chosen. */
export function FileNotices({
  studioId,
  onTaken,
}: {
  studioId: string;
  onTaken: (notice: TakenNotice) => void;
}) {
  const texts = useTexts();
  const words = texts.notice;
  const [fault, setFault] = useState<FileFault>();
  const [file, setFile] = useState<ChosenFile>();
  const anew = useRef<() => void>(null);
  const choosing = useAction(async (chosen: File) => {
    setFile(undefined);
    const reading = await readBroughtFile(chosen, mostBytes);
    setFault('fault' in reading ? reading.fault : undefined);
    if ('fault' in reading) return;
    const { text } = reading;
    const kind = fileKindOf(text);
    const notices = await readNoticeFile(studioId, kind, text, undefined);
    setFile({ name: chosen.name, kind, text, notices });
  });
  const more = useAction(async () => {
    if (!file || file.notices.next === null) return;
    const { kind, text, notices } = file;
    const page = await readNoticeFile(studioId, kind, text, notices.next ?? undefined);
    setFile({ ...file, notices: { ...page, items: [...notices.items, ...page.items] } });
  });
  return (
    <>
      <FileButton
        accept=".csv,.json,.xml,text/csv,application/json,text/xml,application/xml"
        resetRef={anew}
        onChange={(chosen) => {
          // So that the same file, mended, can be chosen again.
          anew.current?.();
          if (chosen) void choosing.run(chosen);
        }}
      >
        {(props) => (
          <Button {...props} variant="default" loading={choosing.busy}>
            {words.file}
          </Button>
        )}
      </FileButton>
      {fault && (
        <Note kind="fault">
          <p>{fault === 'tooLong' ? words.fileTooLong : texts.takingIn.fileFaults[fault]}</p>
        </Note>
      )}
      <ProblemNote problem={choosing.problem ?? more.problem} />
      {file && (
        <>
          <p role="status">{words.ofFile(file.name, file.notices.notices)}</p>
          <Entries label={words.ofFile(file.name, file.notices.notices)}>
            {sortByMet(file.notices.items).map((notice) => (
              <FileNoticeEntry
                key={notice.number}
                notice={notice}
                onChosen={() => onTaken(takenRecord(notice, file.kind))}
              />
            ))}
          </Entries>
          {file.notices.next !== null && (
            <Button mt="md" variant="default" loading={more.busy} onClick={() => void more.run()}>
              {texts.app.more}
            </Button>
          )}
        </>
      )}
    </>
  );
}

function FileNoticeEntry({ notice, onChosen }: { notice: FileNoticeView; onChosen: () => void }) {
  const texts = useTexts();
  const words = texts.notice;
  const [item] = notice.scope.items as LotScope['items'];
  const name = notice.reference ?? words.number(notice.number);
  const { certainLots, possibleLots } = notice;
  return (
    <Entry
      name={name}
      actions={
        <Button variant="default" aria-label={words.chooseOf(name)} onClick={onChosen}>
          {words.choose}
        </Button>
      }
    >
      {item && (
        <p>
          {nameOfItem(item, texts)}: {writtenLots(item, texts)}
        </p>
      )}
      <p>
        {certainLots + possibleLots === 0 ? (
          <Sign standing="good">{words.meetsNothing}</Sign>
        ) : (
          <Sign standing={certainLots > 0 ? 'fault' : 'care'}>{words.meets(certainLots, possibleLots)}</Sign>
        )}
      </p>
      <p className={styles.excerpt}>{notice.text.slice(0, 400)}</p>
    </Entry>
  );
}

function takenRecord(notice: FileNoticeView, source: NoticeFileKind): TakenNotice {
  return {
    origin: { kind: 'written', source },
    text: notice.text,
    parts: notice.parts,
    remarks: notice.remarks,
    scope: notice.scope as LotScope,
    matches: undefined,
    said: saidOf(notice),
  };
}
