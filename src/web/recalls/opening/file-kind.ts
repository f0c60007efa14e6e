import type { NoticeFileKind } from '../../../recalls/notice-files/notice-record.js';

/** What kind of file of notices a text is: by how it begins, for names of files say little. */
export function fileKindOf(text: string): NoticeFileKind {
  const begin = text.replace(/^\uFEFF/, '').trimStart();
  if (begin.startsWith('<')) return 'safety gate xml';
  return begin.startsWith('{') || begin.startsWith('[') ? 'enforcement json' : 'csv';
}
