import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, SwaggerModule } from '@nestjs/swagger';

/** Serves the OpenAPI 3.1 document at /api/openapi.json and a page to read it at /api/docs. */
export function describeApi(app: INestApplication): void {
  const document = SwaggerModule.createDocument(
    app,
    new DocumentBuilder()
      .setOpenAPIVersion('3.1.0')
      .setTitle('Lotward')
      .setDescription(
        'The record a cosmetic-tattoo studio keeps of its pigments and needles. Every write carries an id made by the client; errors are problem documents (RFC 9457) with a stable code.',
      )
      .setVersion('1')
      .build(),
    { operationIdFactory: (controller, method) => `${controller.replace(/Controller$/, '')}_${method}` },
  );
  SwaggerModule.setup('api/docs', app, document, {
    jsonDocumentUrl: 'api/openapi.json',
    yamlDocumentUrl: 'api/openapi.yaml',
    customSiteTitle: 'Lotward API',
  });
}
