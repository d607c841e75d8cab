// `npm run licences`: every package, its licence, whether it ships, and what the registry says of its safety.

import { mayShip, packages } from './packages.ts';
import { run } from './steps.ts';

const all = packages();
for (const { name, version, licence } of all.filter(({ ships }) => ships))
  console.log(`ships   ${name} ${version}: ${licence}${mayShip(licence) ? '' : ' (NOT ALLOWED)'}`);
const byLicence = Map.groupBy(
  all.filter(({ ships }) => !ships),
  ({ licence }) => licence,
);
for (const [licence, those] of [...byLicence].sort(([, a], [, b]) => b.length - a.length))
  console.log(`builds  ${those.length} packages: ${licence}`);

const audit = run('npm', ['audit', '--json'], { quiet: true });
try {
  const { metadata, error } = JSON.parse(audit.stdout) as {
    metadata?: { vulnerabilities: Record<string, number> };
    error?: { summary?: string };
  };
  console.log(
    metadata
      ? `npm audit: ${JSON.stringify(metadata.vulnerabilities)}`
      : `npm audit could not ask the registry: ${error?.summary ?? 'no reason given'}`,
  );
  if (metadata?.vulnerabilities.total) process.exitCode = 1;
} catch {
  console.log('npm audit could not ask the registry');
}
if (all.some(({ ships, licence }) => ships && !mayShip(licence))) process.exitCode = 1;
