/**
 * Asks the package registry which of the installed packages that the service runs on have known vulnerabilities.
 * Exit codes: 0 none of high or critical severity; 1 at least one, each is named; 2 the registry could not be asked.
 */
import { spawnSync } from 'node:child_process';

const longestMilliseconds = 120_000;
const severe = new Set(['high', 'critical']);

const { stdout, error } = spawnSync('npm', ['audit', '--omit=dev', '--json', '--fetch-retries=1'], {
  encoding: 'utf8',
  timeout: longestMilliseconds,
  stdio: ['ignore', 'pipe', 'ignore'],
});

let report;
try {
  report = JSON.parse(stdout);
} catch {
  report = { message: error?.message ?? 'npm gave no report' };
}

if (report.metadata?.vulnerabilities === undefined) {
  const why = report.message || report.statusCode || 'npm gave no report';
  process.stdout.write(
    `NOT CHECKED: whether packages have known vulnerabilities, since the registry could not be asked (${why}). Run \`npm audit --omit=dev\` where it can.\n`,
  );
  process.exitCode = 2;
} else {
  const found = Object.values(report.vulnerabilities ?? {}).filter(({ severity }) => severe.has(severity));
  for (const { name, severity, range, via } of found) {
    const titles = via.map((cause) => cause.title ?? cause).join('; ');
    process.stderr.write(`${severity}: ${name} ${range}: ${titles}\n`);
  }
  process.stdout.write(
    found.length === 0
      ? 'No package the service runs on has a known vulnerability of high or critical severity.\n'
      : `${found.length} packages have known vulnerabilities. Move to versions without them.\n`,
  );
  process.exitCode = found.length === 0 ? 0 : 1;
}
