import { Validator } from '@seriousme/openapi-schema-validator';
import openapiTS, { astToString, type OpenAPI3 } from 'openapi-typescript';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningService, startService } from '../support/service.js';

interface Operation {
  summary?: string;
  parameters?: { name: string; in: string }[];
  responses: Record<string, { content?: Record<string, { schema: object }> }>;
}

type Document = {
  openapi: string;
  paths: Record<string, Record<string, Operation>>;
};

const operations = (document: Document) =>
  Object.entries(document.paths).flatMap(([path, item]) =>
    Object.entries(item).map(([method, operation]) => ({
      route: `${method.toUpperCase()} ${path}`,
      operation,
    })),
  );

// The JSON Schema of the OpenAPI Specification 3.1 as published by the OpenAPI Initiative, by a general validator.
describe('the description of the API', () => {
  let service: RunningService;
  let document: Document;
  beforeAll(async () => {
    service = await startService();
    document = (await service.get<Document>(`${service.url}/api/openapi.json`)).body;
  });
  afterAll(() => service.dispose());

  // `npm test -- tests/published/open-api.spec.ts -u` writes them anew after a route has changed.
  it('is what the types of the web app were made from', async () => {
    const types = astToString(
      await openapiTS(document as unknown as OpenAPI3, { emptyObjectsUnknown: true }),
    );
    await expect(
      `// Made from the OpenAPI document of the service; not written by hand.\n${types}`,
    ).toMatchFileSnapshot('../../src/web/service/api.types.ts');
  });

  it('names every id that stands in a path as a parameter of each of its operations', () => {
    const missing = Object.entries(document.paths).flatMap(([path, item]) =>
      Object.entries(item).flatMap(([method, { parameters = [] }]) =>
        [...path.matchAll(/\{([^}]+)\}/g)]
          .map(([, name]) => name)
          .filter((name) => !parameters.some((one) => one.in === 'path' && one.name === name))
          .map((name) => `${method} ${path}: ${name}`),
      ),
    );
    expect(missing).toEqual([]);
  });

  it('is a valid OpenAPI 3.1 document', async () => {
    const result = await new Validator().validate(structuredClone(document));
    expect([result.valid, document.openapi], JSON.stringify(result.errors)?.slice(0, 2_000)).toEqual([
      true,
      '3.1.0',
    ]);
  });

  it('says of every route what it does and what it answers', () => {
    const all = operations(document);
    expect(all.length).toBeGreaterThan(80);
    const silent = all.filter(({ operation }) => {
      const good = Object.entries(operation.responses).filter(([status]) => status.startsWith('2'));
      // 204 says by itself that the answer has no content.
      const told = good.every(([status, answer]) => status === '204' || answer.content);
      return !operation.summary || good.length !== 1 || !told;
    });
    expect(silent.map(({ route }) => route)).toEqual([]);
  });

  it('says of every route that other answers are problem documents', () => {
    const without = operations(document).filter(
      ({ operation }) => !operation.responses.default?.content?.['application/problem+json'],
    );
    expect(without.map(({ route }) => route)).toEqual([]);
  });

  it('serves a page to read it', async () => {
    const page = await service.get<string>(`${service.url}/api/docs`);
    expect([page.status, page.headers.get('content-type')]).toEqual([
      200,
      expect.stringContaining('text/html'),
    ]);
  });
});
