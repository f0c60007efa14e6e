import { localDay } from '../../identity/local-day.js';
import type { PlaceView } from '../../stock/places.views.js';
import type { ServiceProblem } from '../service/problem.js';
import { usePeople, usePlaces, useStudio } from '../service/studio-answers.js';
import type { NearDays } from './ends-soon.js';

/** What pages of stock need to know of the studio besides the stock itself. */
export interface StudioFacts {
  timeZone: string;
  /** The studio's day, YYYY-MM-DD. */
  today: string;
  near: NearDays;
  /** Where stock may stand; places that are out of use are left out. */
  places: PlaceView[];
  /** The names of a place or person; undefined when nobody knows them. */
  placeName(id: string): string | undefined;
  personName(id: string | null): string | undefined;
}

/** Undefined until all of it is here. */
export function useStudioFacts(studioId: string): {
  facts: StudioFacts | undefined;
  problem: ServiceProblem | undefined;
} {
  const studio = useStudio(studioId);
  const places = usePlaces(studioId);
  const people = usePeople(studioId);
  const problem = studio.problem ?? places.problem ?? people.problem;
  if (!studio.answer || !places.answer || !people.answer) return { facts: undefined, problem };
  const { timeZone } = studio.answer;
  const placeNames = new Map(places.answer.map(({ id, name }) => [id, name]));
  const personNames = new Map(people.answer.map(({ id, name }) => [id, name]));
  return {
    facts: {
      timeZone,
      today: localDay(new Date().toISOString(), timeZone),
      near: studio.answer,
      places: places.answer.filter(({ archived }) => !archived),
      placeName: (id) => placeNames.get(id),
      personName: (id) => (id === null ? undefined : (personNames.get(id) ?? undefined)),
    },
    problem,
  };
}
