/** An opened life as it is written on a label or set by a studio. */
export type OpenedLifeUnit = 'months' | 'days' | 'hours';

/** How long a container may be used after opening: a whole amount of one unit. */
export interface OpenedLife {
  amount: number;
  unit: OpenedLifeUnit;
}

export interface OpenedLifeError {
  error: { code: 'opened life not a duration' | 'opened life out of range'; message: string };
}

/** The longest and shortest life that is believed, by unit; anything beyond is a slip in writing. */
export const MOST_OPENED_LIFE = { months: 120, days: 3650, hours: 8760 } as const;

const SHAPE = /^P(?:([1-9]\d{0,4})([MD])|T([1-9]\d{0,4})H)$/;
const ALLOWED =
  `Allowed are P1M to P${MOST_OPENED_LIFE.months}M (months), P1D to P${MOST_OPENED_LIFE.days}D (days) ` +
  `and PT1H to PT${MOST_OPENED_LIFE.hours}H (hours).`;

/**
 * Reads an opened life: an ISO 8601 duration of one unit, `P12M`, `P30D` or `PT48H`. Years and weeks are not
 * taken, so that one life is written one way. The open-jar symbol "12M" of Regulation (EC) 1223/2009,
 * Annex VII [P] is written `P12M`.
 *
 * @returns amount and unit, or an error with a message for the person
 */
export function readOpenedLife(text: string): OpenedLife | OpenedLifeError {
  const shown = text.trim();
  const match = SHAPE.exec(shown);
  if (match === null) {
    return {
      error: {
        code: 'opened life not a duration',
        message:
          `"${shown.slice(0, 40)}" is not an opened life. ${ALLOWED} ` +
          'Write the label\'s "12M" as P12M; write a year as P12M and a week as P7D.',
      },
    };
  }
  const amount = Number(match[1] ?? match[3]);
  const unit: OpenedLifeUnit = match[3] !== undefined ? 'hours' : match[2] === 'M' ? 'months' : 'days';
  if (amount > MOST_OPENED_LIFE[unit]) {
    return {
      error: {
        code: 'opened life out of range',
        message: `An opened life of ${amount} ${unit} is longer than is believed. ${ALLOWED} Compare with the label.`,
      },
    };
  }
  return { amount, unit };
}
