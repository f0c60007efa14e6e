import type { TextSpan } from '../../../recalls/notice-reading/folded-text.js';
import type { NoticeReading, ReadPartKind } from '../../../recalls/notice-reading/notice-reading.js';

/** Marks of a group look alike. */
export type MarkGroup = 'product' | 'lots' | 'wide' | 'notice' | 'remark';

const groups: Record<ReadPartKind, MarkGroup> = {
  maker: 'product',
  product: 'product',
  shade: 'product',
  gtin: 'product',
  code: 'lots',
  'code range': 'lots',
  'use-by': 'lots',
  manufactured: 'lots',
  'all lots': 'lots',
  'open-ended': 'wide',
  reference: 'notice',
  'issued on': 'notice',
  classification: 'notice',
  risk: 'notice',
  remedy: 'notice',
};

export interface Mark {
  span: TextSpan;
  group: MarkGroup;
  /** What it was read as; null: something to look at. */
  kind: ReadPartKind | null;
  value: string;
}

/** The parts of a reading, each with the index it has there, and after them what has to be looked at and is no part. */
export function marksOf({ parts, remarks }: Pick<NoticeReading, 'parts' | 'remarks'>): Mark[] {
  const known = new Set(parts.map(({ span }) => placeOf(span)));
  return [
    ...parts.map(({ span, kind, value }): Mark => ({ span, kind, value, group: groups[kind] })),
    ...remarks.flatMap(({ span, facts }): Mark[] =>
      span === null || known.has(placeOf(span))
        ? []
        : [{ span, kind: null, value: facts.readAs ?? facts.seen ?? '', group: 'remark' }],
    ),
  ];
}

/** The mark that is in or around a place of the text; undefined when there is none. */
export function markAt(marks: readonly Mark[], { start, end }: TextSpan): number | undefined {
  const exactly = marks.findIndex((mark) => mark.span.start === start && mark.span.end === end);
  if (exactly >= 0) return exactly;
  const over = marks.findIndex((mark) => mark.span.start < end && mark.span.end > start);
  return over >= 0 ? over : undefined;
}

const placeOf = ({ start, end }: TextSpan) => `${start} ${end}`;
