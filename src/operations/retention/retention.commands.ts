import { v7 as uuidv7 } from 'uuid';
import { Administration } from '../../identity/administration.service.js';
import type { Actor } from '../../platform/actor.js';
import type { AddCommands } from '../../platform/commands.js';
import { OperatorError } from '../../platform/operator-error.js';
import { maximumPageSize } from '../../platform/request.dto.js';
import { mostErasedAtOnce } from './retention.dto.js';
import { Retention } from './retention.service.js';
import type { ClientRetentionView } from './retention.views.js';

interface RetentionOptions {
  studio?: string;
  carryOut?: true;
  only?: string[];
}

/** Nothing calls it by itself: the end of retention is a floor, not a date of erasure. */
export const addRetentionCommands: AddCommands = (commands, inProgram) => {
  commands
    .command('retention')
    .description('list the clients whose record need not be kept any longer, and why the others must be')
    .option('--studio <id>', 'the studio; needed when there are several')
    .option('--carry-out', 'erase those who may be, for good; without it nothing is changed')
    .option('--only <references...>', 'with --carry-out: only these, such as K7Q2-M4')
    .action((options: RetentionOptions) =>
      inProgram(async (program) => {
        const actor = await program.get(Administration).actorIn(options.studio);
        const retention = program.get(Retention);
        const all = await allOf(retention, actor);
        const erasable = all.filter((client) => client.erasable);
        if (options.carryOut !== true) return tellList(all, erasable);
        await carryOut(retention, actor, chosen(all, erasable, options.only));
      }),
    );
};

async function allOf(retention: Retention, actor: Actor): Promise<ClientRetentionView[]> {
  const all: ClientRetentionView[] = [];
  for (let after: string | undefined; ; ) {
    const page = await retention.list(actor, { limit: maximumPageSize, after });
    all.push(...page.items);
    if (page.next === null) return all;
    after = page.next;
  }
}

function chosen(
  all: readonly ClientRetentionView[],
  erasable: readonly ClientRetentionView[],
  only: readonly string[] | undefined,
): readonly ClientRetentionView[] {
  if (only === undefined) return erasable;
  return only.map((reference) => {
    const client = all.find(({ clientReference }) => clientReference === reference.toUpperCase());
    if (!client)
      throw new OperatorError(`No client here has the reference ${reference}. Nothing was erased.`);
    if (client.erasable) return client;
    throw new OperatorError(`${reference} may not be erased: ${whyNot(client)} Nothing was erased.`);
  });
}

async function carryOut(
  retention: Retention,
  actor: Actor,
  clients: readonly ClientRetentionView[],
): Promise<void> {
  let erased = 0;
  for (let start = 0; start < clients.length; start += mostErasedAtOnce) {
    const clientIds = clients.slice(start, start + mostErasedAtOnce).map(({ clientId }) => clientId);
    const { answers } = await retention.carryOut(actor, { id: uuidv7(), clientIds });
    for (const { clientReference, answer, obstacles } of answers) {
      if (answer === 'erased') erased += 1;
      print(`  ${clientReference}  ${[answer, ...obstacles.map(({ message }) => message)].join(': ')}`);
    }
  }
  print(`${erased} of ${clients.length} clients were erased.`);
}

function tellList(all: readonly ClientRetentionView[], erasable: readonly ClientRetentionView[]): void {
  print(`${erasable.length} of ${all.length} clients may be erased. Nothing was changed.`);
  for (const client of erasable) print(`  ${client.clientReference}  ${lastRecord(client)}`);
  const kept = all.filter((client) => !client.erasable);
  if (kept.length > 0) print(`${kept.length} are kept:`);
  for (const client of kept) print(`  ${client.clientReference}  ${whyNot(client)}`);
  if (erasable.length > 0)
    print('To erase them, for good: retention --carry-out, or with --only and references.');
}

function lastRecord({ lastRecordOn, keptThrough }: ClientRetentionView): string {
  const last = lastRecordOn === null ? 'never treated' : `last record on ${lastRecordOn}`;
  return keptThrough === null ? last : `${last}, kept through ${keptThrough}`;
}

function whyNot({ obstacles, openSessionIds }: ClientRetentionView): string {
  const open = openSessionIds.length === 0 ? [] : ['A session is planned or under way.'];
  return [...obstacles.map(({ message }) => message), ...open].join(' ');
}

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
