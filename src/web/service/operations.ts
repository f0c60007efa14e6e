import type { paths } from './api.types.js';

/**
 * The operations of the service as its OpenAPI document describes them: `api.types.ts` is made from that document, so a
 * path, a field or an answer that the service does not have does not compile.
 */
type Base = '/api/v1';
export type Method = 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';

type OperationAt<Path extends keyof paths, M extends Method> = paths[Path][Lowercase<M> & keyof paths[Path]];

/** Paths below `/api/v1` that have this method, ids in braces as in the document. */
export type PathOf<M extends Method> = {
  [Path in keyof paths]: Path extends `${Base}${infer Rest}`
    ? OperationAt<Path, M> extends { responses: unknown }
      ? Rest
      : never
    : never;
}[keyof paths];

type Operation<M extends Method, P extends PathOf<M>> = OperationAt<`${Base}${P}` & keyof paths, M>;

/** Required where the document requires it; the document has `never` where there is nothing. */
type PartOf<Whole, Name extends string> = Whole extends { [name in Name]: infer Part }
  ? Part
  : Whole extends { [name in Name]?: infer Part }
    ? [Part] extends [undefined]
      ? unknown
      : Partial<Exclude<Part, undefined>>
    : unknown;

/** What fills the braces of the path, and what stands in its query. */
export type ParametersOf<M extends Method, P extends PathOf<M>> =
  Operation<M, P> extends { parameters: infer Given }
    ? PartOf<Given, 'path'> & PartOf<Given, 'query'>
    : unknown;

export type BodyOf<M extends Method, P extends PathOf<M>> =
  Operation<M, P> extends { requestBody: { content: { 'application/json': infer Body } } } ? Body : undefined;

/** The JSON of a success; undefined when it has none. */
export type AnswerOf<M extends Method, P extends PathOf<M>> =
  Operation<M, P> extends { responses: infer Responses }
    ? JsonOf<Responses[Extract<keyof Responses, 200 | 201 | 202>]>
    : never;

type JsonOf<Response> = [Response] extends [never]
  ? undefined
  : Response extends { content: { 'application/json': infer Json } }
    ? Json
    : undefined;
