import { expect, it } from 'vitest';
import { changeOfCourse, contentOfCourse, newCourse } from './course-draft.js';

const draft = { ...newCourse, procedureId: 'brows', heldOn: '2026-10-03', trainees: '8', reference: '  ' };

it('hands in a number, and nothing where no name is written', () => {
  expect(contentOfCourse(draft)).toEqual({
    procedureId: 'brows',
    heldOn: '2026-10-03',
    trainees: 8,
    reference: null,
  });
});

it('sends only what was edited', () => {
  expect(changeOfCourse(draft, { trainees: '8' })).toEqual({ trainees: 8 });
});
