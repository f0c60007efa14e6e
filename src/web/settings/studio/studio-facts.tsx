import type { StudioView } from '../../../identity/studios.views.js';
import { Facts } from '../../frame/facts.js';
import { Section } from '../../frame/section.js';
import { useTexts } from '../../texts/texts.js';
import { currencyName } from './currencies.js';

/** The settings of a studio, to be read. */
export function StudioFacts({ studio }: { studio: StudioView }) {
  const texts = useTexts();
  const words = texts.studioSettings;
  const { retention } = studio;
  const onOrOff = (is: boolean) => (is ? texts.settings.on : texts.settings.off);
  const facts: (readonly [string, string])[] = [
    [words.name, studio.name],
    ...(studio.contactPoint === null ? [] : [[words.contactPoint, studio.contactPoint] as const]),
    [words.timeZone, studio.timeZone],
    [words.currency, currencyName(studio.currency, texts.language)],
    [words.houseBlends, onOrOff(studio.houseBlends === 'allowed')],
    [words.passkeysRequired, onOrOff(studio.passkeysRequired)],
    [
      words.retention,
      retention === null ? words.retentionNotChosen : words.retentionNow(retention.years, retention.law),
    ],
  ];
  return (
    <Section title={words.general} hint={words.generalHint}>
      <Facts facts={facts} />
    </Section>
  );
}
