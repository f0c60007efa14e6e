import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { unusableFile } from '../../platform/files/unusable-file.js';
import { readNotice } from '../notice-reading/notice-reading.js';
import { NoticeFileReader } from './notice-file-reader.service.js';
import type { ReadNoticeFileDto } from './notice-files.dto.js';
import type { FileNoticeView, NoticeFileView } from './notice-files.views.js';
import { needsReading, proposalOf } from './notice-proposal.js';
import type { NoticeRecord } from './notice-record.js';

const noticesPerPage = 100;

/** Reads files of notices that somebody brings: whole or not at all. Writes nothing. */
@Injectable()
export class NoticeFiles {
  constructor(
    private readonly reader: NoticeFileReader,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem unusable-file naming every fault */
  async read(actor: Actor, { kind, text, after = 0 }: ReadNoticeFileDto): Promise<NoticeFileView> {
    const damage = text.indexOf('\uFFFD');
    const { records, faults } =
      damage === -1 ? this.reader.read(kind, text) : { records: [], faults: [unreadAt(text, damage)] };
    if (faults.length > 0) throw unusableFile({ faults, rows: [] });
    const today = localDay(this.clock.now(), actor.timeZone);
    const shown = records.slice(after, after + noticesPerPage);
    return {
      notices: records.length,
      items: shown.map((record) => viewOf(record, today)),
      next: after + noticesPerPage < records.length ? after + noticesPerPage : null,
    };
  }
}

/** What a reader puts where it could not make out a character: the file was read in another encoding than its own. */
function unreadAt(text: string, position: number) {
  const row = text.slice(0, position).split('\n').length;
  return {
    row,
    column: null,
    message: `Line ${row} holds a character that could not be read; save the file as UTF-8, or bring it unchanged`,
  };
}

function viewOf(record: NoticeRecord, today: string): FileNoticeView {
  const reading = needsReading(record) ? readNotice(record.text, { today }) : null;
  const { remarks, ...proposal } = proposalOf(record, reading);
  return {
    number: record.number,
    text: record.text,
    ...proposal,
    remarks: remarks.map(({ facts, ...remark }) => ({ ...remark, facts: { ...facts } })),
  };
}
