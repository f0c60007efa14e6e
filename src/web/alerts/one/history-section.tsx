import type { AlertEntryView, AlertHistoryView } from '../../../alerts/alerts.views.js';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import { Section } from '../../frame/section.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { useTexts } from '../../texts/texts.js';
import { useNameOf } from '../use-name-of.js';
import { writtenMorning } from '../written-morning.js';

/** Who did what about an alert, and when. */
export function HistorySection({
  standing: { studioId, personId: me },
  answer: { alert, history, earlierSteps },
}: {
  standing: StandingView;
  answer: AlertHistoryView;
}) {
  const texts = useTexts();
  const words = texts.alertPages;
  const when = useStudioInstants(studioId);
  const nameOf = useNameOf(studioId);
  const who = (id: string | null) =>
    id === null ? words.one.service : id === me ? words.me : (nameOf(id) ?? texts.alerts.somebody);
  const whatOf = ({ event, severity, toPersonId, until }: AlertEntryView) => {
    const to = toPersonId === me ? words.toMe : (nameOf(toPersonId) ?? texts.alerts.somebody);
    switch (event) {
      case 'acknowledged':
        return alert.endsWhenAcknowledged ? words.wasSeen : words.events[event];
      case 'given':
        return words.wasGivenTo(to);
      case 'handed on':
        return toPersonId === null ? words.nobodyTookIt : words.handedOnTo(to);
      case 'put off':
        return until === null
          ? words.events[event]
          : words.wasPutOffUntil(writtenMorning(until, texts, when));
      case 'opened':
      case 'worse':
      case 'milder':
        return words.nowOf(words.events[event], texts.alerts.severities[severity]);
      default:
        return words.events[event];
    }
  };
  return (
    <Section title={words.one.history} hint={words.one.historyHint}>
      {earlierSteps > 0 && <p>{words.one.earlierSteps(earlierSteps)}</p>}
      <Entries label={words.one.history}>
        {history.map((entry) => (
          <Entry key={`${entry.sequence} ${entry.event}`} name={whatOf(entry)}>
            <p>
              {who(entry.personId)}, {when(entry.recordedAt)}
            </p>
            {entry.note !== null && <p>{entry.note}</p>}
            {entry.hasNote && entry.note === null && <p>{words.one.hiddenNote}</p>}
          </Entry>
        ))}
      </Entries>
    </Section>
  );
}
