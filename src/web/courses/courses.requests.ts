import type { BodyOf } from '../service/operations.js';
import { request } from '../service/request.js';

export type NewCourse = BodyOf<'POST', '/studios/{studioId}/training-courses'>;
export type CourseChange = BodyOf<'PATCH', '/studios/{studioId}/training-courses/{courseId}'>;

/** From today on, the earliest first. */
export const listCourses = (studioId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/training-courses', { studioId, after });
export const bookCourse = (studioId: string, course: NewCourse) =>
  request('POST', '/studios/{studioId}/training-courses', { studioId }, course);
export const changeCourse = (studioId: string, courseId: string, change: CourseChange) =>
  request('PATCH', '/studios/{studioId}/training-courses/{courseId}', { studioId, courseId }, change);
export const cancelCourse = (studioId: string, courseId: string, id: string, version: number) =>
  request(
    'POST',
    '/studios/{studioId}/training-courses/{courseId}/cancel',
    { studioId, courseId },
    { id, version },
  );
