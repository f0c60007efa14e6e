import { Anchor } from '@mantine/core';
import { photoAddress } from '../service/photos.js';
import { useTexts } from '../texts/texts.js';
import styles from './photo-field.module.css';

/** A kept photo, small; a link to it as it came. */
export function ShownPhoto({ studioId, photoId }: { studioId: string; photoId: string }) {
  const texts = useTexts().photos;
  const address = photoAddress(studioId, photoId);
  return (
    <Anchor className={styles.shown} href={address} target="_blank" rel="noopener" aria-label={texts.kept}>
      <img className={styles.picture} src={address} alt="" loading="lazy" />
    </Anchor>
  );
}
