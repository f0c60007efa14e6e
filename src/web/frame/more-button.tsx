import { Button } from '@mantine/core';
import { useTexts } from '../texts/texts.js';

/** At the end of a list that has more than what is shown. */
export function MoreButton({ list }: { list: { hasMore: boolean; isAsking: boolean; more(): void } }) {
  const texts = useTexts();
  if (!list.hasMore) return null;
  return (
    <Button mt="md" variant="default" loading={list.isAsking} onClick={list.more}>
      {texts.app.more}
    </Button>
  );
}
