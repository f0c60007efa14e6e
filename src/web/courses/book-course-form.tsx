import { Button } from '@mantine/core';
import { useRef } from 'react';
import { Fields } from '../frame/fields.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useEdits } from '../frame/use-edits.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { type CourseDraft, contentOfCourse, newCourse } from './course-draft.js';
import { CourseFields } from './course-fields.js';
import { bookCourse } from './courses.requests.js';

export function BookCourseForm({ studioId, onBooked }: { studioId: string; onBooked: () => Promise<void> }) {
  const words = useTexts().courses;
  const edits = useEdits<CourseDraft>(newCourse);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const content = contentOfCourse(edits.draft);
    await bookCourse(studioId, { id: ids.for(content), ...content });
    ids.renew();
    edits.forget();
    await onBooked();
  });
  return (
    <Fields onSubmit={() => void run()} label={words.book}>
      <CourseFields studioId={studioId} edits={edits} problem={problem} />
      <ProblemNote problem={problem} />
      <div>
        <Button type="submit" loading={busy}>
          {words.bookSubmit}
        </Button>
      </div>
    </Fields>
  );
}
