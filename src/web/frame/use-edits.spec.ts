import { expect, it } from 'vitest';
import { type Edited, editsOf } from './use-edits.js';

interface Draft {
  name: string;
  day: string;
}

/** A form that is open while what it changes is read anew. */
function form() {
  let edited: Edited<Draft> = {};
  return (saved: Draft) =>
    editsOf(saved, edited, (made) => {
      edited = made(edited);
    });
}

it('takes over what others changed beside it, and hands in only what was edited here', () => {
  const open = form();
  const first = { name: 'A', day: '1' };
  open(first).set({ ...first, day: '2' });
  const read = open({ name: 'B', day: '1' });
  expect(read.draft).toEqual({ name: 'B', day: '2' });
  expect(read.changes).toEqual({ day: '2' });
  expect([read.meanwhile('name'), read.meanwhile('day')]).toEqual([undefined, undefined]);
});

it('shows what others made of the same field, and keeps what was written here', () => {
  const open = form();
  open({ name: 'A', day: '1' }).set({ day: '2' });
  const read = open({ name: 'A', day: '3' });
  expect([read.draft.day, read.meanwhile('day')]).toEqual(['2', '3']);
  // Whoever wants theirs takes it, and then nothing is to be saved.
  read.set({ day: '3' });
  expect(open({ name: 'A', day: '3' }).isChanged).toBe(false);
});
