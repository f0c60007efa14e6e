import type { RunningService } from './service.js';

/** The part of JSON Schema that the document uses. */
export interface Schema {
  $ref?: string;
  allOf?: Schema[];
  type?: string | string[];
  format?: string;
  enum?: (string | null)[];
  pattern?: string;
  minimum?: number;
  maximum?: number;
  minLength?: number;
  maxLength?: number;
  items?: Schema;
  properties?: Record<string, Schema>;
  required?: string[];
}

/** One operation of the document. */
export interface ApiRoute {
  /** `POST /people/{personId}/invitation`: below the studio, unless it begins with `/api` or `/health`. */
  name: string;
  method: string;
  /** As the document has it, `{…}` where ids stand. */
  path: string;
  isOfStudio: boolean;
  permission: string | undefined;
  /** What may be presented: `token`, `browser`; nothing where the route is open. */
  security: string[];
  pathParameters: string[];
  query: { name: string; schema: Schema }[];
  body: Schema | undefined;
}

/** Where a value stands in a body: names of properties, `*` for every element of a list. */
export interface BodyPlace {
  at: string[];
  schema: Schema;
}

interface Operation {
  parameters?: { name: string; in: string; schema: Schema }[];
  requestBody?: { content: Record<string, { schema: Schema }> };
  security?: Record<string, string[]>[];
  'x-lotward-permission'?: string;
}

const studioPath = '/api/v1/studios/{studioId}';

/** The OpenAPI document of a running service. */
export class ApiDocument {
  private constructor(
    readonly routes: ApiRoute[],
    private readonly schemas: Record<string, Schema>,
  ) {}

  static async of(service: RunningService): Promise<ApiDocument> {
    const { paths, components } = (await (await fetch(`${service.url}/api/openapi.json`)).json()) as {
      paths: Record<string, Record<string, Operation>>;
      components: { schemas: Record<string, Schema> };
    };
    const routes = Object.entries(paths).flatMap(([path, operations]) =>
      Object.entries(operations).map(([method, operation]) => routeOf(path, method, operation)),
    );
    return new ApiDocument(routes, components.schemas);
  }

  /** The schema itself where only its name is given. */
  resolve(schema: Schema): Schema {
    const [part] = schema.allOf ?? [];
    const name = (schema.$ref ?? part?.$ref)?.split('/').at(-1);
    if (name === undefined) return schema;
    const named = this.schemas[name];
    if (!named) throw new Error(`The document names the schema ${name} and does not have it.`);
    return named;
  }

  /** Every place of a body that holds a text, a number, a choice or an id, those within lists once. */
  places(route: ApiRoute): BodyPlace[] {
    return route.body === undefined ? [] : this.placesIn(route.body, []);
  }

  /** The route that a request was made to; undefined when the document has none. */
  routeOf(method: string, address: string): ApiRoute | undefined {
    const path = new URL(address, 'http://localhost').pathname;
    const fitting = this.routes.filter(
      (route) =>
        route.method === method && new RegExp(`^${route.path.replace(/\{[^}]+\}/g, '[^/]+')}$`).test(path),
    );
    // A route that names its last step goes before one that takes anything there.
    return fitting.sort((one, other) => one.pathParameters.length - other.pathParameters.length)[0];
  }

  private placesIn(given: Schema, at: string[]): BodyPlace[] {
    const schema = this.resolve(given);
    if (schema.properties) {
      return Object.entries(schema.properties).flatMap(([name, part]) => this.placesIn(part, [...at, name]));
    }
    if (schema.items) return this.placesIn(schema.items, [...at, '*']);
    return [{ at, schema }];
  }
}

function routeOf(path: string, method: string, operation: Operation): ApiRoute {
  const parameters = operation.parameters ?? [];
  const isOfStudio = path.startsWith(studioPath);
  return {
    name: `${method.toUpperCase()} ${isOfStudio ? path.slice(studioPath.length) || '/' : path}`,
    method: method.toUpperCase(),
    path,
    isOfStudio,
    permission: operation['x-lotward-permission'],
    security: (operation.security ?? []).flatMap((each) => Object.keys(each)),
    pathParameters: [...path.matchAll(/\{([^}]+)\}/g)].flatMap(([, name]) => name ?? []),
    query: parameters.filter((parameter) => parameter.in === 'query'),
    body: operation.requestBody?.content['application/json']?.schema,
  };
}

/** An address of a route, with values for what stands in braces. */
export function addressOf(
  service: Pick<RunningService, 'url'>,
  route: ApiRoute,
  values: Record<string, string>,
): string {
  const path = route.path.replace(/\{([^}]+)\}/g, (_, name: string) => {
    const value = values[name];
    if (value === undefined) throw new Error(`${route.name} needs a value for ${name}.`);
    return encodeURIComponent(value);
  });
  return service.url + path;
}
