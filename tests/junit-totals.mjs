// Adds up JUnit reports: node junit-totals.mjs FOLDER SUITE...
// Prints "passed failed skipped" on the last line. A named suite that left no report, or an empty one, counts as one
// failed: a test host that crashes writes nothing.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const [folder, ...expected] = process.argv.slice(2);
const totals = { passed: 0, failed: 0, skipped: 0 };
const seen = new Set();

for (const file of readdirSync(folder).filter((name) => name.endsWith('.xml'))) {
  for (const [tag] of readFileSync(join(folder, file), 'utf8').matchAll(/<testsuite\s[^>]*>/g)) {
    const read = (name) => tag.match(new RegExp(`\\s${name}="([^"]*)"`))?.[1];
    const count = (name) => Number(read(name) ?? 0);
    const failed = count('failures') + count('errors');
    const skipped = count('skipped');
    totals.failed += failed;
    totals.skipped += skipped;
    totals.passed += count('tests') - failed - skipped;
    if (count('tests') > 0) {
      expected.filter((suite) => read('name').includes(suite)).forEach((suite) => seen.add(suite));
    }
  }
}

for (const suite of expected.filter((name) => !seen.has(name))) {
  console.error(`No results of ${suite}: its host crashed, or it found none of its tests.`);
  totals.failed += 1;
}
console.log(`${totals.passed} ${totals.failed} ${totals.skipped}`);
