import type { TrainingCourseView } from '../../reorder/courses/training-courses.views.js';

/** A course as it is written. */
export interface CourseDraft {
  procedureId: string;
  /** YYYY-MM-DD. */
  heldOn: string;
  trainees: string;
  reference: string;
}

export const newCourse: CourseDraft = { procedureId: '', heldOn: '', trainees: '', reference: '' };

export function draftOfCourse(course: TrainingCourseView): CourseDraft {
  const { procedureId, heldOn, trainees, reference } = course;
  return { procedureId, heldOn, trainees: String(trainees), reference: reference ?? '' };
}

export function contentOfCourse({ procedureId, heldOn, trainees, reference }: CourseDraft) {
  return {
    procedureId,
    heldOn,
    trainees: Number(trainees),
    reference: reference.trim() === '' ? null : reference.trim(),
  };
}

/** Only what was edited, so that what others changed beside it stays. */
export function changeOfCourse(draft: CourseDraft, changes: Partial<CourseDraft>) {
  return Object.fromEntries(
    Object.entries(contentOfCourse(draft)).filter(([field]) => Object.hasOwn(changes, field)),
  ) as Partial<ReturnType<typeof contentOfCourse>>;
}
