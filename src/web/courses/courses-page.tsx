import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Page } from '../frame/page.js';
import { PagedEntries } from '../frame/paged-entries.js';
import { Section } from '../frame/section.js';
import { usePages } from '../service/use-pages.js';
import { useTexts } from '../texts/texts.js';
import { BookCourseForm } from './book-course-form.js';
import { CourseEntry } from './course-entry.js';
import { listCourses } from './courses.requests.js';

/** Training courses that are booked: what they need is known beforehand. */
export function CoursesPage({ standing }: { standing: StandingView }) {
  const words = useTexts().courses;
  const { studioId, studioName, permissions } = standing;
  const list = usePages(['training courses', studioId], (after) => listCourses(studioId, after));
  const mayPlan = permissions.includes('plan orders');
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.list} hint={words.listHint}>
        <PagedEntries
          label={words.list}
          list={list}
          none={words.none}
          entry={(course) => (
            <CourseEntry
              key={course.id}
              studioId={studioId}
              course={course}
              mayPlan={mayPlan}
              onChanged={list.reload}
            />
          )}
        />
      </Section>
      {mayPlan && (
        <Section title={words.book} hint={words.bookHint}>
          <BookCourseForm studioId={studioId} onBooked={list.reload} />
        </Section>
      )}
    </Page>
  );
}
