import { setImmediate } from 'node:timers/promises';
import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { unusableFile } from '../../platform/files/unusable-file.js';
import { readNotice } from '../notice-reading/notice-reading.js';
import { ScopeMatches } from '../scope-matches.service.js';
import { NoticeFileReader } from './notice-file-reader.service.js';
import type { ReadNoticeFileDto } from './notice-files.dto.js';
import type { FileNoticeView, NoticeFileView } from './notice-files.views.js';
import { type NoticeProposal, needsReading, proposalOf } from './notice-proposal.js';
import type { NoticeRecord } from './notice-record.js';

const noticesPerPage = 100;
/** A page ends sooner when its texts are longer than so many characters: reading them takes its time. */
const charactersPerPage = 500_000;

/** Reads files of notices that somebody brings: whole or not at all. Writes nothing. */
@Injectable()
export class NoticeFiles {
  constructor(
    private readonly reader: NoticeFileReader,
    private readonly clock: Clock,
    private readonly matches: ScopeMatches,
  ) {}

  /** @throws Problem unusable-file naming every fault */
  async read(actor: Actor, { kind, text, after = 0 }: ReadNoticeFileDto): Promise<NoticeFileView> {
    const damage = text.indexOf('\uFFFD');
    const { records, faults } =
      damage === -1 ? this.reader.read(kind, text) : { records: [], faults: [unreadAt(text, damage)] };
    if (faults.length === 0 && records.length === 0) faults.push(noNotices);
    if (faults.length > 0) throw unusableFile({ faults, rows: [] });
    const today = localDay(this.clock.now(), actor.timeZone);
    const shown: { record: NoticeRecord; proposal: NoticeProposal }[] = [];
    for (const record of onPage(records, after)) {
      // Whoever is being served meanwhile comes in between.
      await setImmediate();
      const reading = needsReading(record) ? readNotice(record.text, { today }) : null;
      shown.push({ record, proposal: proposalOf(record, reading) });
    }
    const next = after + shown.length;
    const counts = await this.matches.counts(
      actor,
      shown.map(({ proposal }) => proposal.scope),
    );
    return {
      notices: records.length,
      items: shown.map(({ record, proposal }, index) => ({
        ...viewOf(record, proposal),
        ...(counts[index] ?? { certainLots: 0, possibleLots: 0 }),
      })),
      next: next < records.length ? next : null,
    };
  }
}

const noNotices = {
  row: null,
  column: null,
  message: 'The file holds no notice. Nothing was recalled, or it was cut off.',
};

/** At least one, when there is any. */
function onPage(records: readonly NoticeRecord[], after: number): NoticeRecord[] {
  const shown: NoticeRecord[] = [];
  let characters = 0;
  for (const record of records.slice(after, after + noticesPerPage)) {
    characters += record.text.length;
    if (shown.length > 0 && characters > charactersPerPage) break;
    shown.push(record);
  }
  return shown;
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

function viewOf(
  { number, text }: NoticeRecord,
  { remarks, ...proposal }: NoticeProposal,
): Omit<FileNoticeView, 'certainLots' | 'possibleLots'> {
  return {
    number,
    text,
    ...proposal,
    remarks: remarks.map(({ facts, ...remark }) => ({ ...remark, facts: { ...facts } })),
  };
}
