import { Button } from '@mantine/core';
import { useState } from 'react';
import { Fields } from '../../frame/fields.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { readNotice } from '../recalls.requests.js';
import { FileNotices } from './file-notices.js';
import { isTooLong, NoticeTextField } from './notice-text-field.js';
import styles from './opening.module.css';
import { byHand, type TakenNotice } from './taken-notice.js';
import { takenText } from './taken-text.js';

/** Where a notice comes from: its text, a file of several, or somebody's own words. */
export function TakeNotice({
  studioId,
  onTaken,
}: {
  studioId: string;
  onTaken: (notice: TakenNotice) => void;
}) {
  const texts = useTexts();
  const words = texts.notice;
  const [text, setText] = useState('');
  const { run, busy, problem } = useAction(async () => {
    onTaken(takenText(text, await readNotice(studioId, text), { kind: 'written', source: 'pasted' }));
  });
  return (
    <>
      <Section title={words.take} hint={words.takeHint}>
        <Fields onSubmit={() => void run()} label={words.take}>
          <NoticeTextField
            label={words.paste}
            description={words.pasteHint}
            rows={12}
            text={text}
            fault={problem?.faultOf('text')}
            onChanged={setText}
          />
          <ProblemNote problem={problem} />
          <div className={styles.ways}>
            <Button type="submit" loading={busy} disabled={text.trim() === '' || isTooLong(text)}>
              {words.read}
            </Button>
          </div>
        </Fields>
      </Section>
      <Section title={words.fileTitle} hint={words.fileHint}>
        <FileNotices studioId={studioId} onTaken={onTaken} />
      </Section>
      <Section title={words.byHandTitle} hint={words.byHandHint}>
        <Button variant="default" onClick={() => onTaken(byHand)}>
          {words.byHand}
        </Button>
      </Section>
    </>
  );
}
