import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { TrainingCourseView } from '../../reorder/courses/training-courses.views.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Entry } from '../frame/entries.js';
import { useEdits } from '../frame/use-edits.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { ChangeForm } from '../settings/change-form.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { type CourseDraft, changeOfCourse, draftOfCourse } from './course-draft.js';
import { CourseFields } from './course-fields.js';
import { cancelCourse, changeCourse } from './courses.requests.js';

/** One course that is booked. */
export function CourseEntry({
  studioId,
  course,
  mayPlan,
  onChanged,
}: {
  studioId: string;
  course: TrainingCourseView;
  mayPlan: boolean;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.courses;
  const [isChanging, setIsChanging] = useState(false);
  const ids = useRef(new RequestIds()).current;
  const { id: courseId, version, heldOn, procedureName, trainees, reference } = course;
  const day = writtenDay(heldOn, texts.language);
  const what = `${procedureName}, ${day}`;
  const cancel = async () => {
    const id = ids.for({ courseId, version });
    await readAnewIfStale(() => cancelCourse(studioId, courseId, id, version), onChanged);
    await onChanged();
  };
  return (
    <Entry
      name={day}
      actions={
        mayPlan &&
        !isChanging && (
          <>
            <Button variant="default" aria-label={words.changeOf(what)} onClick={() => setIsChanging(true)}>
              {words.change}
            </Button>
            <ConfirmButton label={words.cancelOf(what)} question={words.cancelQuestion(what)} action={cancel}>
              {words.cancel}
            </ConfirmButton>
          </>
        )
      }
      below={
        isChanging && (
          <ChangeCourseForm
            studioId={studioId}
            course={course}
            title={words.changeOf(what)}
            onChanged={onChanged}
            onClose={() => setIsChanging(false)}
          />
        )
      }
    >
      <p>{words.facts(procedureName, trainees)}</p>
      {reference !== null && <p>{reference}</p>}
    </Entry>
  );
}

function ChangeCourseForm({
  studioId,
  course,
  title,
  onChanged,
  onClose,
}: {
  studioId: string;
  course: TrainingCourseView;
  title: string;
  onChanged: () => Promise<void>;
  onClose: () => void;
}) {
  const edits = useEdits<CourseDraft>(draftOfCourse(course));
  const { id: courseId, version } = course;
  return (
    <ChangeForm
      label={title}
      edits={edits}
      version={version}
      save={(id) =>
        changeCourse(studioId, courseId, { id, version, ...changeOfCourse(edits.draft, edits.changes) })
      }
      reload={onChanged}
      onClose={onClose}
    >
      {(problem) => <CourseFields studioId={studioId} edits={edits} present={course} problem={problem} />}
    </ChangeForm>
  );
}
