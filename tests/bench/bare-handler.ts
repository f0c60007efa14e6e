/**
 * The yardstick: Fastify and better-sqlite3 with nothing between them. For each request it runs the statements that the
 * service ran for one of the same kind, prepared, with the same pragmas, and answers with as many bytes.
 *
 *   node bare-handler.js <file of BareHandlerInput>
 */
import { readFileSync } from 'node:fs';
import BetterSqlite3 from 'better-sqlite3';
import { fastify } from 'fastify';
import { v7 as uuidv7 } from 'uuid';
import { kindHeader } from './keep-alive-load.js';
import type { RequestTemplate, StatementTemplate, ValueSource } from './statement-template.js';

export interface BareHandlerInput {
  database: string;
  templates: Record<string, RequestTemplate>;
}

type Row = Record<string, unknown>;

const { database, templates } = JSON.parse(readFileSync(process.argv[2] ?? '', 'utf8')) as BareHandlerInput;

const writer = new BetterSqlite3(database, { timeout: 10_000 });
writer.pragma('journal_mode = WAL');
writer.pragma('synchronous = FULL');
writer.pragma('foreign_keys = ON');
const reader = new BetterSqlite3(database, { readonly: true, timeout: 10_000 });

function prepared({ onReader, sql, values }: StatementTemplate) {
  const statement = (onReader ? reader : writer).prepare<unknown[], Row>(sql);
  return { statement, paths: values.map((value) => ({ ...value, path: pathOf(value) })) };
}

function pathOf(value: ValueSource): string[] {
  return value.from === 'request' ? value.field.split('.') : [];
}

const kinds = new Map(
  Object.entries(templates).map(([kind, { statements, answer }]) => [
    kind,
    { statements: statements.map(prepared), answer },
  ]),
);

function fieldOf(request: unknown, path: readonly string[]): unknown {
  let value: unknown = request;
  for (const key of path) value = (value as Record<string, unknown> | undefined)?.[key];
  return value;
}

function handle(kind: string, request: unknown): string {
  const template = kinds.get(kind);
  if (!template) throw new Error(`There is no template for "${kind}".`);
  const results: Row[][] = [];
  const freshIds: string[] = [];
  const valueFrom = (value: ValueSource & { path: string[] }): unknown => {
    switch (value.from) {
      case 'constant':
        return value.value;
      case 'request':
        return fieldOf(request, value.path);
      case 'row': {
        const found = results[value.statement]?.[value.row]?.[value.column];
        return value.more === 1 ? Number(found) + 1 : found;
      }
      case 'fresh id':
        freshIds[value.number] ??= uuidv7();
        return freshIds[value.number];
    }
  };
  try {
    for (const { statement, paths } of template.statements) {
      const values = paths.map(valueFrom);
      if (statement.reader) results.push(statement.all(...values));
      else {
        statement.run(...values);
        results.push([]);
      }
    }
  } catch (error) {
    if (writer.inTransaction) writer.exec('ROLLBACK');
    throw error;
  }
  return template.answer;
}

const app = fastify();
app.post('/api/v1/studios/:studioId/sessions/:sessionId/:step', (request, reply) => {
  reply.type('application/json; charset=utf-8');
  return handle(String(request.headers[kindHeader]), { params: request.params, body: request.body });
});
const url = await app.listen({ host: '127.0.0.1', port: 0 });
process.stdout.write(`ready on ${url}\n`);
process.once('SIGTERM', () => {
  void app.close().then(() => {
    reader.close();
    writer.close();
  });
});
