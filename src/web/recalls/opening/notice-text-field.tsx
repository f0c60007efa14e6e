import { Textarea } from '@mantine/core';
import { maximumNoticeCharacters } from '../../../recalls/notice-reading/notice-reading.js';
import { useTexts } from '../../texts/texts.js';

/** Whether the service takes so long a text. */
export function isTooLong(text: string): boolean {
  return text.length > maximumNoticeCharacters;
}

/** Where the text of a notice is pasted. What is too long is said and never cut: a lot could stand at its end. */
export function NoticeTextField({
  label,
  description,
  rows,
  text,
  fault,
  onChanged,
}: {
  label: string;
  description: string;
  rows: number;
  text: string;
  fault: string | undefined;
  onChanged: (text: string) => void;
}) {
  const texts = useTexts();
  const count = new Intl.NumberFormat(texts.language);
  return (
    <Textarea
      label={label}
      description={description}
      rows={rows}
      autoComplete="off"
      spellCheck={false}
      value={text}
      error={
        isTooLong(text)
          ? texts.notice.textTooLong(count.format(text.length), count.format(maximumNoticeCharacters))
          : fault
      }
      onChange={(event) => onChanged(event.currentTarget.value)}
    />
  );
}
