/** How a shade is kept: on the shelf, ordered when somebody is booked for it, or not ordered any more. */
export const rangeChoices = ['keep in stock', 'order for the appointment', 'let run out'] as const;
export type RangeChoice = (typeof rangeChoices)[number];
