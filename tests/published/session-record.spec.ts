import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CompletionView } from '../../src/sessions/completion.views.js';
import type { ClientRecordView } from '../../src/sessions/session-record.views.js';
import { makeSampleStudio, receive, type SampleStudio } from '../support/sample-studio.js';
import { engines, type RunningService, startService } from '../support/service.js';

/**
 * National Environmental Health Association, Body Art Model Code, March 2024, §7 [P]: a client record holds the date
 * and time, the place on the body, the expiration date and the batch or lot of every sterilised instrument, the
 * expiration date, brand, colour and batch or lot of every ink and pigment, complications, and the artist's name and
 * signature.
 */
describe.each(engines)('a client record by the Body Art Model Code (March 2024, §7) on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let record: ClientRecordView;
  let artistId: string;

  beforeAll(async () => {
    service = await startService(engine);
    studio = await makeSampleStudio(service);
    const settings = await service.seen<{ version: number }>('');
    await service.patch('', { version: settings.version, timeZone: 'Europe/Vienna', houseBlends: 'allowed' });
    artistId = (await service.made<{ id: string }>('/people', { name: 'Mira Anders', role: 'artist' })).id;
    const liner = await receive(service, studio, {
      productId: studio.linerId,
      code: 'NEEDLE-7',
      useBy: '2031-04',
      quantity: 3,
    });
    const pigment = await receive(service, studio, {
      productId: studio.umberId,
      code: 'INK-9',
      useBy: '2030-02-28',
    });
    const second = await receive(service, studio, {
      productId: studio.umberId,
      code: 'INK-10',
      useBy: '2032-01-31',
    });
    const gel = await receive(service, studio, {
      productId: studio.gelId,
      code: 'GEL-1',
      useBy: '2029-12-31',
    });
    const id = (line: { containers: { id: string }[] }) => line.containers[0]?.id ?? '';
    for (const bottle of [pigment, second]) await service.made(`/containers/${id(bottle)}/open`);
    const blend = await service.made<{ containerId: string }>('/blends', {
      productId: studio.umberId,
      placeId: studio.placeId,
      code: 'HOUSE-1',
      parents: [
        { containerId: id(pigment), microlitres: 1_000 },
        { containerId: id(second), microlitres: 3_000 },
      ],
    });
    const session = await service.made<{ id: string }>('/sessions/walk-in', {
      clientId: studio.clientId,
      artistId,
      procedureId: studio.procedureId,
      visitKind: 'first session',
      bodyPlaceDetail: 'Both brows, left higher',
    });
    for (const containerId of [id(liner), id(pigment), blend.containerId, id(gel)]) {
      await service.made(`/sessions/${session.id}/scans`, { containerId });
    }
    await service.made(`/sessions/${session.id}/scans`, { containerId: id(liner), another: true });
    const mix = await service.made<{ id: string }>(`/sessions/${session.id}/mixes`, { label: 'base' });
    for (const containerId of [id(pigment), blend.containerId]) {
      await service.made(`/sessions/${session.id}/mixes/${mix.id}/components`, { containerId, drops: 3 });
    }
    const tray = await service.seen<{ lines: { id: string; containerId: string }[] }>(
      `/sessions/${session.id}/tray`,
    );
    const gelLine = tray.lines.find((line) => line.containerId === id(gel));
    await service.made<CompletionView>(`/sessions/${session.id}/completion`, {
      lines: [{ trayLineId: gelLine?.id, outcome: 'used', microlitres: 500 }],
      complications: 'Slight swelling on the left, gone after ten minutes',
      signedBy: artistId,
    });
    record = await service.seen<ClientRecordView>(`/sessions/${session.id}/record`);
  });
  afterAll(() => service.dispose());

  it('holds the date and the time, also as the studio read them from its clock', () => {
    expect(record.occurredAt).toMatch(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/);
    const inVienna = new Intl.DateTimeFormat('sv-SE', {
      timeZone: 'Europe/Vienna',
      dateStyle: 'short',
      timeStyle: 'short',
    }).format(new Date(record.occurredAt ?? ''));
    expect(record.localDateAndTime).toBe(inVienna);
  });

  it('holds the place on the body', () => {
    expect(record).toMatchObject({ bodyPlace: 'brows', bodyPlaceDetail: 'Both brows, left higher' });
  });

  it('holds expiration date and lot of every sterilised instrument', () => {
    expect(record.instruments.map(({ useBy, lotCode, pieces }) => ({ useBy, lotCode, pieces }))).toEqual([
      { useBy: '2031-04-30', lotCode: 'NEEDLE-7', pieces: 1 },
      { useBy: '2031-04-30', lotCode: 'NEEDLE-7', pieces: 1 },
    ]);
  });

  it('holds expiration date, brand, colour and lot of every pigment', () => {
    const pigments = record.pigments.map(({ useBy, makerName, shade, lotCode }) => ({
      useBy,
      makerName,
      shade,
      lotCode,
    }));
    expect(pigments).toHaveLength(2);
    expect(pigments).toContainEqual({
      useBy: '2030-02-28',
      makerName: 'Halden Colour Works',
      shade: 'Warm 02',
      lotCode: 'INK-9',
    });
    expect(pigments).toContainEqual(expect.objectContaining({ lotCode: 'HOUSE-1', shade: 'Warm 02' }));
  });

  it('holds the same of every pigment inside a house blend', () => {
    const house = record.pigments.find((use) => use.lotCode === 'HOUSE-1');
    expect(record.blendedPigments).toHaveLength(1);
    expect(record.blendedPigments[0]).toMatchObject({
      useId: house?.id,
      lots: [
        { useBy: '2032-01-31', makerName: 'Halden Colour Works', shade: 'Warm 02', lotCode: 'INK-10' },
        { useBy: '2030-02-28', makerName: 'Halden Colour Works', shade: 'Warm 02', lotCode: 'INK-9' },
      ],
    });
  });

  it('holds what else touched the client', () => {
    expect(record.others).toMatchObject([
      { productName: 'Numbing gel', lotCode: 'GEL-1', useBy: '2029-12-31' },
    ]);
  });

  it('holds complications', () => {
    expect(record.complications).toBe('Slight swelling on the left, gone after ten minutes');
  });

  it("holds the artist's name and signature", () => {
    expect(record.artist).toEqual({ id: artistId, name: 'Mira Anders' });
    expect(record.signature).toMatchObject({ personId: artistId, name: 'Mira Anders' });
    expect(record.signature?.signedAt).toMatch(/Z$/);
  });

  it('names the client', () => {
    expect(record.client).toMatchObject({ id: studio.clientId, name: 'Ida Sommer' });
  });
});
