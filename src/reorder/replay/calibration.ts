/** A quantity that was foretold to be enough with a probability, and what came. */
export interface Foretold {
  level: number;
  foretold: number;
  /** The probability that the forecast gave to `foretold` being enough: counts are whole, so it is `level` or more. */
  claimed: number;
  came: number;
}

export interface Calibration {
  level: number;
  forecasts: number;
  /** How often it was enough; null when nothing was foretold. */
  enough: number | null;
  /** How often it should have been, by what the forecasts claimed. */
  claimed: number | null;
  /** Of `enough`, if the forecasts were right and did not depend on each other. */
  standardError: number | null;
  verdict: 'as claimed' | 'too seldom' | 'too often' | 'too few to tell';
}

/** Fewer say nothing either way. */
const FEWEST_FORECASTS = 20;
/** Farther off than that many standard errors is no chance. */
const STANDARD_ERRORS = 2;

/** How often forecasts were really enough, by level, the lowest first. */
export function calibrate(foretold: readonly Foretold[]): Calibration[] {
  const levels = [...new Set(foretold.map(({ level }) => level))].sort((one, other) => one - other);
  return levels.map((level) => {
    const own = foretold.filter((each) => each.level === level);
    const forecasts = own.length;
    const enough = own.filter(({ foretold: quantity, came }) => came <= quantity).length / forecasts;
    const claimed = own.reduce((sum, each) => sum + each.claimed, 0) / forecasts;
    const variance = own.reduce((sum, each) => sum + each.claimed * (1 - each.claimed), 0);
    const standardError = Math.sqrt(variance) / forecasts;
    return {
      level,
      forecasts,
      enough,
      claimed,
      standardError,
      verdict: verdictOf(enough, claimed, standardError, forecasts),
    };
  });
}

function verdictOf(
  enough: number,
  claimed: number,
  standardError: number,
  forecasts: number,
): Calibration['verdict'] {
  if (forecasts < FEWEST_FORECASTS) return 'too few to tell';
  // Rounding of what is claimed is no reason to find fault.
  const tolerated = STANDARD_ERRORS * standardError + 1e-9;
  if (enough < claimed - tolerated) return 'too seldom';
  return enough > claimed + tolerated ? 'too often' : 'as claimed';
}
