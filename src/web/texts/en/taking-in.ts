import type { BookingColumn } from '../../../sessions/bookings/booking-columns.js';
import type { OpeningStockColumn } from '../../../stock/opening-stock/opening-stock-columns.js';
import type { StockEffect } from '../../../stock/opening-stock/opening-stock-plan.js';

const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

export const takingInTexts = {
  takingIn: {
    begin: 'How the list looks',
    template: 'Save an empty list',
    example: 'Save an example',
    columns: 'All columns',
    columnsHint:
      'The first row holds the names of the columns, in English and in any order. Cells are separated by commas, semicolons or tabs. Dates are written year first, 2026-04-03; numbers without separators of thousands.',
    needed: 'always needed',
    bring: 'Bring the list',
    bringHint: 'Nothing is recorded before you have seen what would become of each row. Up to 1,000 rows.',
    choose: 'Choose a file',
    chosen: (name: string) => `${name} is read.`,
    paste: 'Or paste it here',
    pasteHint: 'As copied from a spreadsheet, with the row of column names.',
    look: 'Look it over',
    fileFaults: {
      workbook: 'This is a workbook of a spreadsheet. Save it there as CSV (UTF-8) and choose that file.',
      notUtf8:
        'This file is not UTF-8, so names in it would be spoilt. Save it as CSV (UTF-8) and choose it again.',
      tooLong: 'This file is too long. Bring it in parts of up to 1,000 rows.',
    },
    preview: 'What would become of it',
    previewHint: 'Nothing is recorded yet. Everything is taken in at once, or nothing.',
    unreadable: 'The file cannot be read as it is. Correct it and bring it again.',
    someFaulty: (faulty: number, rows: number) =>
      `${faulty} of ${plural(rows, 'row', 'rows')} cannot be taken in. Correct them in your file and bring it again; until then nothing is taken in.`,
    noFaults: (rows: number) => `${plural(rows, 'row', 'rows')}, no faults.`,
    nothingNew: 'Everything in it is on record already or left out; there is nothing to take in.',
    changed:
      'Something was changed here since you looked it over, so nothing was taken in. It was looked over again.',
    takeIn: 'Take everything in',
    takingIn: 'It is being taken in; with many rows that takes some seconds.',
    rows: 'Rows of the list',
    row: (number: number) => `Row ${number}`,
    faulty: 'to be corrected',
    onlyFaulty: (count: number) => `Only the ${plural(count, 'row', 'rows')} to be corrected`,
    onlyTold: (count: number) => `Only the ${plural(count, 'row', 'rows')} with a remark`,
    more: (count: number) => `Show more, ${count} are left`,
  },

  openingStock: {
    title: 'Opening stock',
    lead: 'What lies on the shelf when you begin, taken over from a spreadsheet: with its lots and dates, and with products that are not in the register yet.',
    beginHint: 'Begin with the empty list or the example, and fill it in where you count.',
    columns: {
      maker: 'Whose name is on the label. One that is not known is added.',
      product: 'What it is called. One that is not known is added when its kind is given.',
      shade: 'Of pigments: the name or number of the shade.',
      kind: 'Of a product that is added: pigment, cartridge or consumable.',
      role: 'Of a pigment that is added: colour or thinner. Left empty: colour.',
      'bottle ml': 'Of a pigment that is added: what its label says, in millilitres.',
      'opened life': 'Of a product that is added, from its label: P12M is 12 months, P30D 30 days.',
      notation: 'Of a cartridge that is added, such as 1207RL.',
      gtin: 'The number below the bars, 8 to 14 digits, as text. It is added to the product.',
      lot: 'The code as printed; or “none printed”, or “unreadable”: such stock is put aside until you decide.',
      batch: 'A second code, if there is one.',
      'use by': 'As exactly as printed: 2027-06-30, 2027-06 or 2027; or “none printed”.',
      'manufactured on': 'If it is printed.',
      quantity: 'How many bottles, boxes or pieces.',
      'pieces per box': 'Where boxes are counted: what is in each. Every box gets a label of its own.',
      'opened on': 'Of bottles that are open: since when.',
      remaining: 'Of open pigments: what is about left in each, 6 ml or 60 %. Left empty: a full bottle.',
      place: 'As under Places. May be left empty when there is only one.',
      owner: 'Whose it is, when it is not the studio’s: a name as under People.',
      'same code':
        'Only when a lot is known with another date: separate lot, keep recorded date or correct recorded date.',
    } satisfies Record<OpeningStockColumn, string>,
    effects: {
      'new maker': 'new maker',
      'new product': 'new product',
      'new GTIN': 'new number',
      'new lot': 'new lot',
      'joins a lot': 'more of a known lot',
      'corrects a lot': 'corrects the date of a lot',
    } satisfies Record<StockEffect, string>,
    amount: (pieces: number, containers: number) =>
      pieces === containers
        ? plural(pieces, 'piece', 'pieces')
        : `${plural(pieces, 'piece', 'pieces')} in ${plural(containers, 'box', 'boxes')}`,
    opened: (day: string) => `opened ${day}`,
    left: (volume: string) => `about ${volume} left in each`,
    setAside: (reasons: string[]) => `will be put aside: ${reasons.join(', ')}`,
    made: (counts: { lots: number; containers: number; products: number; makers: number }) =>
      `${[
        plural(counts.lots, 'new lot', 'new lots'),
        plural(counts.containers, 'bottle or box', 'bottles and boxes'),
        plural(counts.products, 'new product', 'new products'),
        plural(counts.makers, 'new maker', 'new makers'),
      ].join(', ')}.`,
    taken: (counts: { rows: number; lots: number; containers: number }) =>
      `Taken in: ${plural(counts.rows, 'row', 'rows')}, ${plural(counts.lots, 'new lot', 'new lots')}, ${plural(counts.containers, 'bottle or box', 'bottles and boxes')}.`,
    toDelivery: 'Show what was taken in',
    toLabels: 'Print its labels',
    toHolds: 'Decide on what was put aside',
  },

  bookings: {
    title: 'Bookings from a list',
    lead: 'What is booked already, taken over from a list or a calendar. What is on record is taken over no second time, so the same list can be brought again.',
    beginHint: 'A list as CSV, or a calendar as iCalendar (.ics).',
    bringHint:
      'Nothing is recorded before you have seen what would become of each row. What is chosen here holds for rows that do not say it.',
    calendar: 'How a calendar is read',
    calendarRules: [
      'The title is read in parts between dashes, such as “Ida Sommer – Powdered brows – touch-up”: a part that is the name of a procedure, a kind of visit or somebody who works here is that; what remains is the client, by name or reference.',
      'One person who was invited is the client, with name and address.',
      'Lines of the description count before both: Client, Reference, Contact, Artist, Procedure, Visit, Booked, each followed by a colon.',
      'An entry that names no procedure is left out, and so is what lies before today or was cancelled. When a procedure is chosen for all, every entry is a booking.',
      'Times without a time zone are by the studio’s clocks. An entry for a whole day must be given a time.',
      'Entries that repeat are taken one by one, up to 60 times, if they end.',
    ],
    columns: {
      'booking id':
        'The number under which your list knows it. By it the booking is found again when the list is brought again.',
      'client reference': 'Of a client who is on record, such as 7KQ2-M4.',
      'client name':
        'Or the name. A client who is not known is put on record; names and contacts are kept sealed.',
      contact: 'Telephone number or mail address. With it a client is found for certain.',
      artist: 'A name as under People. Left empty: the one chosen below.',
      procedure: 'Its name as under Procedures. Left empty: the one chosen below.',
      visit: 'patch test, first session, touch-up, refresh, correction, lightening or training.',
      'planned start': 'By the studio’s clocks: 2026-04-03 14:30.',
      'booked at': 'When it was booked, a day or a time.',
    } satisfies Record<BookingColumn, string>,
    artistForAll: 'Artist, where none is named',
    procedureForAll: 'Procedure, where none is named',
    procedureForAllHint: 'Of a calendar: when one is chosen, every entry is a booking.',
    visitForAll: 'Visit, where none is said',
    asTheRowSays: 'As each row says',
    effects: {
      'new session': 'new session',
      'on record already': 'on record already',
      'left out': 'left out',
    },
    withNewClient: 'new session, new client',
    with: (artist: string) => `with ${artist}`,
    reference: (reference: string) => `client ${reference}`,
    made: (counts: { sessions: number; clients: number; onRecord: number; leftOut: number }) =>
      `${[
        plural(counts.sessions, 'new session', 'new sessions'),
        plural(counts.clients, 'new client', 'new clients'),
        `${counts.onRecord} on record already`,
        `${counts.leftOut} left out`,
      ].join(', ')}.`,
    taken: (counts: { sessions: number; clients: number }) =>
      `Taken in: ${plural(counts.sessions, 'session', 'sessions')}, ${plural(counts.clients, 'new client', 'new clients')}.`,
    toToday: 'To the day’s sessions',
  },
};
