import type { MadeLinkView } from '../../identity/sign-in/sign-in.views.js';
import { ShownOnce } from '../frame/shown-once.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstantHere } from '../texts/written-dates.js';

export interface MadeLink extends MadeLinkView {
  personName: string;
  /** Whether the person signs in already, and chooses a new password by it. */
  isForNewPassword: boolean;
}

/** The link of a person, right after it was made. */
export function MadeLinkNote({ link, onDone }: { link: MadeLink; onDone: () => void }) {
  const texts = useTexts();
  return (
    <ShownOnce
      title={texts.people.linkTitle(link.personName)}
      label={texts.people.linkLabel}
      value={link.link}
      onDone={onDone}
    >
      <p>{texts.people.linkDetail(writtenInstantHere(link.expiresAt, texts.language))}</p>
      {link.isForNewPassword && <p>{texts.people.makeNewPassword}</p>}
    </ShownOnce>
  );
}
