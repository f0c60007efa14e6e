import type { NoticeOrigin } from './taken-notice.js';

/** The notice as the service takes it: written out, or one that is on record already. */
export function noticeBody(origin: NoticeOrigin, text: string, reference: string) {
  if (origin.kind === 'on record') return { noticeId: origin.noticeId };
  return {
    notice: {
      source: origin.source,
      text,
      ...(reference.trim() !== '' && { reference: reference.trim() }),
    },
  };
}
