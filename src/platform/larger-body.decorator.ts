import { RouteConfig } from '@nestjs/platform-fastify';

/** What the door looks for in the configuration of a route. */
export interface LargerBodyConfig {
  largerBodyBytes?: number;
}

/** Beyond every file and text that is taken in; what any route may ask for. */
export const maximumLargerBodyBytes = 4_194_304;

/** A route whose bodies may be larger than others: whole files, long texts. Not to be used beside another RouteConfig. */
export const TakesLargerBody = (bytes: number): MethodDecorator =>
  RouteConfig({ largerBodyBytes: bytes } satisfies LargerBodyConfig) as MethodDecorator;
