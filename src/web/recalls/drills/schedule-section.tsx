import { Button, Checkbox, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { DrillScheduleView } from '../../../recalls/drills/drills.views.js';
import { Fields } from '../../frame/fields.js';
import { Note } from '../../frame/note.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { readAnewIfStale } from '../../service/read-anew-if-stale.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useRequester } from '../../sign-in/requester.js';
import { Sign } from '../../stock/sign.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import styles from '../recalls.module.css';
import { setDrillSchedule, setDrillScheduleOfChain, useDrillSchedule } from './drills.requests.js';

const mostMonths = 60;

/** How often the studio rehearses, and when the next drill is due. */
export function ScheduleSection({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.drills;
  const { answer: schedule, problem, reload } = useDrillSchedule(standing.studioId);
  return (
    <Section title={words.schedule} hint={words.scheduleHint}>
      <ProblemNote problem={problem} />
      {!schedule && !problem && <p role="status">{texts.app.loading}</p>}
      {schedule && (
        <>
          <p>
            {schedule.due && <Sign standing="care">{words.due}</Sign>}
            {said(schedule, texts)}
          </p>
          {standing.permissions.includes('answer recalls') && (
            <ScheduleForm standing={standing} schedule={schedule} reload={reload} />
          )}
        </>
      )}
    </Section>
  );
}

function said({ everyMonths, nextOn }: DrillScheduleView, texts: ReturnType<typeof useTexts>): string {
  const words = texts.drills;
  return [
    everyMonths === null ? words.noRhythm : words.everyMonths(everyMonths),
    ...(nextOn === null ? [] : [words.nextBy(writtenDay(nextOn, texts.language))]),
  ].join(' ');
}

function ScheduleForm({
  standing: { studioId, permissions },
  schedule,
  reload,
}: {
  standing: StandingView;
  schedule: DrillScheduleView;
  reload: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.drills;
  const { studios } = useRequester();
  const ids = useRef(new RequestIds()).current;
  const [months, setMonths] = useState(schedule.everyMonths === null ? '' : String(schedule.everyMonths));
  const [nextOn, setNextOn] = useState(schedule.nextOn ?? '');
  const [wholeChain, setWholeChain] = useState(false);
  const [isSaved, setSaved] = useState(false);
  const { run, busy, problem } = useAction(async () => {
    setSaved(false);
    const rhythm = {
      everyMonths: months === '' ? null : Number(months),
      nextOn: nextOn === '' ? null : nextOn,
    };
    if (wholeChain) {
      await setDrillScheduleOfChain(studioId, { id: ids.for({ ...rhythm, wholeChain }), ...rhythm });
    } else {
      const { version } = schedule;
      const from = { ...rhythm, ...(version !== null && { version }) };
      await readAnewIfStale(() => setDrillSchedule(studioId, { id: ids.for(from), ...from }), reload);
    }
    ids.renew();
    setSaved(true);
    await reload();
  });
  return (
    <Fields onSubmit={() => void run()} label={words.schedule}>
      <div className={styles.pair}>
        <TextInput
          type="number"
          inputMode="numeric"
          min={1}
          max={mostMonths}
          step={1}
          label={words.months}
          description={words.monthsHint}
          value={months}
          error={problem?.faultOf('everyMonths')}
          onChange={(event) => setMonths(event.currentTarget.value)}
        />
        <TextInput
          type="date"
          label={words.nextOn}
          description={words.nextOnHint}
          value={nextOn}
          error={problem?.faultOf('nextOn')}
          onChange={(event) => setNextOn(event.currentTarget.value)}
        />
      </div>
      {studios.length > 1 && permissions.includes('answer recalls of the chain') && (
        <Checkbox
          label={words.scheduleOfChain}
          checked={wholeChain}
          onChange={(event) => setWholeChain(event.currentTarget.checked)}
        />
      )}
      <ProblemNote problem={problem} />
      {isSaved && (
        <Note kind="good">
          <p>{words.scheduleSaved}</p>
        </Note>
      )}
      <div>
        <Button type="submit" variant="default" loading={busy}>
          {texts.app.save}
        </Button>
      </div>
    </Fields>
  );
}
