/**
 * Columns that a migration added to a table of an earlier one, by table. The digests of rows written before do not know
 * them, so a digest leaves each of them out while it is null (src/platform/audit/row-digest.ts). Whoever adds a column
 * adds it here too; tests/covered-tables.spec.ts compares this with what the migrations do.
 */
export const addedColumns: Readonly<Record<string, readonly string[]>> = {
  alert: ['put_off_until', 'given_to', 'closed_by', 'ended_at', 'turn', 'turn_at'],
  container: ['usable_through'],
  expected_delivery: ['day_said'],
  hold_release: ['request_id'],
  outbox: ['destination_id', 'summary_id', 'begun', 'not_before'],
  session: ['booking_hash'],
  stock_level: ['plan_id'],
  person: ['account_id', 'until'],
  studio: ['retention_preset', 'retention_years', 'retention_law', 'passkeys_required', 'contact_point'],
};
