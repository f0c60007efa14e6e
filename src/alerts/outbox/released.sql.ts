/**
 * Whether an outbox row may be tried as soon as it is due, as a condition in SQL: nothing earlier of its alert to the
 * same destination is unsettled, and its destination is not paused. What waits for the end of quiet hours holds nothing
 * up: what is urgent breaks through them.
 *
 * Both are counted rather than asked for by NOT EXISTS: right after ten thousand alerts PostgreSQL takes the table for
 * small, and would join all of it with all of it.
 */
export const isReleased = `(
    SELECT count(*) FROM outbox AS earlier
    WHERE earlier.studio_id = outbox.studio_id AND earlier.alert_id = outbox.alert_id AND earlier.state = 'pending'
      AND COALESCE(earlier.destination_id, '') = COALESCE(outbox.destination_id, '')
      AND (earlier.created_at, earlier.id) < (outbox.created_at, outbox.id)
      AND (earlier.not_before IS NULL OR earlier.not_before <= outbox.created_at)) = 0
  AND (
    SELECT count(*) FROM alert_destination AS destination
    WHERE destination.studio_id = outbox.studio_id AND destination.id = outbox.destination_id
      AND destination.state = 'paused') = 0`;

/**
 * Whether an outbox row is due, as a condition in SQL. What is to wait longer than anything ever waits was put off by a
 * clock that was wrong, and is due too.
 * @param now where the present instant stands among the parameters, such as `$2`
 * @param beyond where the instant of `beyondAnyWait` stands
 */
export const isDue = (now: string, beyond: string) =>
  `(outbox.next_attempt_at <= ${now} OR outbox.next_attempt_at > ${beyond})`;
