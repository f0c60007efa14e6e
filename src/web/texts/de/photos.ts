import type { photosTexts as english } from '../en/photos.js';

export const photosTexts: typeof english = {
  photos: {
    take: 'Foto aufnehmen',
    another: 'Anderes Foto aufnehmen',
    without: 'Foto entfernen',
    preview: 'Das Foto, das aufbewahrt wird',
    kept: 'Foto der Sache; öffnet es in voller Größe',
    unreadable: 'Dieses Gerät kann das Bild nicht lesen. Das Foto noch einmal aufnehmen, als JPEG oder PNG.',
  },
};
