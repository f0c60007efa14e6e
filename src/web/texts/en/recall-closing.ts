import type { CountedAs } from '../../../recalls/closing/closing-obstacles.js';
import type { ClosingObstacle, RecallKind, RecallState } from '../../../recalls/vocabulary.js';

const count = (number: number, one: string, many: string) => `${number} ${number === 1 ? one : many}`;

export const recallClosingTexts = {
  recallClosing: {
    obstacles: 'What stands against closing',
    obstaclesHint: {
      recall: 'Each is mended on its own page. Or close all the same and say why: the report shows it.',
      drill: 'It stops nothing in a drill, and shows in the score.',
    } satisfies Record<RecallKind, string>,
    ready: 'Nothing stands against closing.',
    of: {
      'undecided lots': (all: number) => `of ${count(all, 'lot', 'lots')} that may be meant`,
      'clients not told': (all: number) => `of ${count(all, 'client', 'clients')} whom it touched`,
      'containers not found': (all: number) => `of ${count(all, 'bottle or box', 'bottles and boxes')}`,
      'stock without disposition': (all: number) => `of ${count(all, 'bottle or box', 'bottles and boxes')}`,
      'pieces unexplained': (all: number) => `of ${count(all, 'piece that', 'pieces that')} came in`,
    } satisfies Record<ClosingObstacle, (all: number) => string>,
    counts: {
      'not tried': (number) => `${number} not tried yet`,
      'tried in vain': (number) => `${number} tried in vain`,
      'not found': (number) => `${number} looked for in vain`,
      'not looked for': (number) => `${number} not looked for yet`,
      pieces: (number) => `${count(number, 'piece', 'pieces')} in them`,
    } as Partial<Record<CountedAs, (number: number) => string>>,
    mend: {
      'undecided lots': 'Decide them',
      'clients not told': 'Tell them',
      'containers not found': 'Look for them',
      'stock without disposition': 'Return or destroy them',
      'pieces unexplained': 'Look at the balance',
    } satisfies Record<ClosingObstacle, string>,
    obstacleNames: {
      'undecided lots': 'Lots not decided',
      'clients not told': 'Clients not told',
      'containers not found': 'Containers not found',
      'stock without disposition': 'Stock neither returned nor destroyed',
      'pieces unexplained': 'Pieces unexplained',
    } satisfies Record<ClosingObstacle, string>,
    override: 'Close all the same',
    overrideOf: {
      'undecided lots': 'Close all the same: lots not decided',
      'clients not told': 'Close all the same: clients not told',
      'containers not found': 'Close all the same: containers not found',
      'stock without disposition': 'Close all the same: stock neither returned nor destroyed',
      'pieces unexplained': 'Close all the same: pieces unexplained',
    } satisfies Record<ClosingObstacle, string>,
    reasonOf: {
      'undecided lots': 'Why lots may stay undecided',
      'clients not told': 'Why clients are not told',
      'containers not found': 'Why containers need not be found',
      'stock without disposition': 'Why stock may stay',
      'pieces unexplained': 'Why pieces stay unexplained',
    } satisfies Record<ClosingObstacle, string>,
    reasonHint: 'It stands in the report. Nothing of a client.',
    sign: { recall: 'Sign and close', drill: 'End the drill' } satisfies Record<RecallKind, string>,
    signHint: {
      recall:
        'What is known now is kept as the report and never changes. What was not disposed of stays on hold, and what arrives later of these lots is held too.',
      drill: 'The clock stops, and the score is kept.',
    } satisfies Record<RecallKind, string>,
    signedByYou: (name: string) => `You sign: ${name}.`,
    second: 'Who signs with you',
    secondHint: 'Another person who has looked at it, if there is one.',
    noSecond: 'nobody',
    stillStanding: (number: number) =>
      `${count(number, 'thing stands', 'things stand')} against it without a reason: see above.`,
    close: { recall: 'Sign and close the recall', drill: 'Stop the clock' } satisfies Record<
      RecallKind,
      string
    >,
    done: {
      recall: 'The recall is closed.',
      drill: 'The drill is over.',
    } satisfies Record<RecallKind, string>,
    staying: (holds: number, guards: number) =>
      `${count(holds, 'hold stays', 'holds stay')} on what is left; ${guards === 0 ? 'nothing is held on arrival' : 'what arrives later of these lots is held too'}.`,
    closed: {
      open: 'Open',
      closed: 'How it was closed',
      withdrawn: 'How it was withdrawn',
    } satisfies Record<RecallState, string>,
    closedHint: 'As it stands in the report.',
    signedBy: (name: string) => `signed by ${name}`,
    secondBy: (name: string) => `with ${name}`,
    overridden: (obstacle: string, reason: string) => `${obstacle}, closed all the same: ${reason}`,
    holdsStay:
      'What was not disposed of stays on hold, and what arrives later of these lots is held on arrival.',
    report: 'The report',
    reportHint: 'As it stood at the end. Clients stand in it by reference.',
    reportOpen: 'As it stands now, marked as not closed. Clients stand in it by reference.',
    pdf: 'The report (PDF)',
    json: 'The same as data (JSON)',
  },
};
