import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, type OpenAPIObject, SwaggerModule } from '@nestjs/swagger';

type Operation = NonNullable<OpenAPIObject['paths'][string]['get']>;
type Schema = NonNullable<NonNullable<OpenAPIObject['components']>['schemas']>[string];

const problemSchema: Schema = {
  type: 'object',
  description: 'Problem details by RFC 9457. Further members depend on the code.',
  properties: {
    type: { type: 'string', format: 'uri' },
    title: { type: 'string' },
    status: { type: 'integer' },
    detail: { type: 'string', description: 'What was seen, what is allowed and what to do.' },
    code: { type: 'string', description: 'Stable; a program may rely on it.' },
    faults: {
      type: 'array',
      items: {
        type: 'object',
        properties: { field: { type: 'string' }, message: { type: 'string' } },
        required: ['field', 'message'],
      },
    },
  },
  required: ['type', 'title', 'status', 'detail', 'code'],
};

/** Serves the OpenAPI 3.1 document, made when it is first asked for, at /api/openapi.json and a page to read it at /api/docs. */
export function describeApi(app: INestApplication): void {
  SwaggerModule.setup('api/docs', app, () => completed(describe(app)), {
    jsonDocumentUrl: 'api/openapi.json',
    yamlDocumentUrl: 'api/openapi.yaml',
    customSiteTitle: 'Lotward API',
  });
}

function describe(app: INestApplication): OpenAPIObject {
  return SwaggerModule.createDocument(
    app,
    new DocumentBuilder()
      .setOpenAPIVersion('3.1.0')
      .setTitle('Lotward')
      .setDescription(
        'The record a cosmetic-tattoo studio keeps of its pigments and needles. Every write carries an id made by the client; an unknown field is refused; errors are problem documents (RFC 9457) with a stable code.',
      )
      .setVersion('1')
      .addBearerAuth(
        { type: 'http', bearerFormat: 'lotward_…', description: 'The token of a program.' },
        'token',
      )
      .addCookieAuth(
        'lotward-sign-in',
        {
          type: 'apiKey',
          in: 'cookie',
          description: 'Set when somebody signs in at a browser; over HTTPS its name begins with __Host-.',
        },
        'browser',
      )
      .build(),
    { operationIdFactory: (controller, method) => `${controller.replace(/Controller$/, '')}_${method}` },
  );
}

/** What holds for every route and every schema, and so is said once here instead of at each. */
function completed(document: OpenAPIObject): OpenAPIObject {
  for (const [path, item] of Object.entries(document.paths)) {
    for (const operation of Object.values(item) as Operation[]) {
      operation.parameters = withEveryPathParameter(path, operation.parameters);
      operation.security = presentedTo(operation);
      operation.responses.default = {
        description: 'Anything else',
        content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
      };
    }
  }
  wholeNumbers(document.paths);
  const schemas = document.components?.schemas ?? {};
  for (const [name, schema] of Object.entries(schemas)) {
    wholeNumbers(schema);
    if (name.endsWith('Dto') && !('$ref' in schema)) schema.additionalProperties = false;
  }
  schemas.Problem = problemSchema;
  return document;
}

/** Ids that the guard takes from the path, such as the studio's, are parameters like those that a method names. */
function withEveryPathParameter(path: string, named: Operation['parameters'] = []): Operation['parameters'] {
  const missing = [...path.matchAll(/\{([^}]+)\}/g)]
    .flatMap(([, name]) => name ?? [])
    .filter(
      (name) =>
        !named.some((parameter) => 'in' in parameter && parameter.in === 'path' && parameter.name === name),
    );
  const schema: Schema = { type: 'string', format: 'uuid' };
  return [...missing.map((name) => ({ name, in: 'path' as const, required: true, schema })), ...named];
}

/** What has to be presented, by the entry that the guard goes by as well. */
function presentedTo(operation: Operation): Record<string, string[]>[] {
  const admission = (operation as { 'x-lotward-permission'?: string })['x-lotward-permission'];
  if (admission === 'anyone') return [];
  return admission?.startsWith('in person') ? [{ browser: [] }] : [{ token: [] }, { browser: [] }];
}

/** Derived shares; every other quantity is whole. */
const fractions: ReadonlySet<string> = new Set(['shareMicrolitres']);

/** The compiler knows numbers only. */
function wholeNumbers(node: unknown): void {
  if (node === null || typeof node !== 'object') return;
  const schema = node as { type?: unknown };
  if (schema.type === 'number') schema.type = 'integer';
  if (Array.isArray(schema.type)) {
    schema.type = schema.type.map((type) => (type === 'number' ? 'integer' : type));
  }
  for (const [name, child] of Object.entries(node)) {
    if (!fractions.has(name)) wholeNumbers(child);
  }
}
