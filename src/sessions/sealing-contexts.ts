/**
 * Where the sealed fields of a session belong: what is sealed for one place does not open at another. All are sealed
 * under the client's own key.
 */
export const bodyPlaceDetailPlace = (sessionId: string) => `session.body_place_detail:${sessionId}`;
/** A text for people. */
export const complicationsPlace = (sessionId: string) => `session.complications:${sessionId}`;
/** JSON. */
export const healedResultPlace = (sessionId: string) => `session.healed_result:${sessionId}`;
/** Why something was used, or why a use was reversed: a text for people. */
export const useReasonPlace = (useId: string) => `session_use.reason:${useId}`;
export const useReversalReasonPlace = (useId: string) => `session_use_reversal.reason:${useId}`;
