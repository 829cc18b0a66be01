#!/usr/bin/env bash
# Runs every check of the project and ends with one line: N passed, N failed.
# With CI=true the restore is locked: a lock file that does not fit its project fails.
set -uo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.." || exit 1

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_CLI_UI_LANGUAGE=en
configuration=Release
editor=src/plan-editor
results=$(mktemp -d)
trap 'rm -rf "$results"' EXIT
passed=0
failed=0
skipped=0

say() { printf '\n== %s\n' "$*"; }

finish() {
  if [ "$skipped" -gt 0 ]; then echo "$skipped skipped"; fi
  echo "$passed passed, $failed failed"
  if [ "$failed" -eq 0 ] && [ "$passed" -gt 0 ]; then exit 0; fi
  exit 1
}

give_up() {
  echo "$*" >&2
  failed=$((failed + 1))
  finish
}

# One check that passes or fails as a whole.
check() {
  say "$1"
  shift
  if "$@"; then passed=$((passed + 1)); else failed=$((failed + 1)); return 1; fi
}

# Adds the reports of a folder; what its named suites left out counts as failed. Sets found_failures.
add_reports() {
  local line p f s
  if ! line=$(node tests/junit-totals.mjs "$@" | tail -n 1) || ! read -r p f s <<<"$line"; then
    p=0 f=1 s=0
  fi
  passed=$((passed + p)) failed=$((failed + f)) skipped=$((skipped + s))
  found_failures=$f
}

need_tools() {
  command -v dotnet >/dev/null || give_up "The .NET 10 SDK is needed: dotnet was not found."
  command -v node >/dev/null && command -v npm >/dev/null || give_up "Node 20 is needed: node or npm was not found."
  local missing=()
  [ -n "${SHOWSAFETY_CHROMIUM:-}" ] || command -v chromium chromium-browser google-chrome >/dev/null || missing+=(chromium)
  command -v pdftotext >/dev/null || missing+=(poppler-utils)
  command -v qpdf >/dev/null || missing+=(qpdf)
  [ ${#missing[@]} -eq 0 ] && return
  local wanted="The tests need these packages, please install them: ${missing[*]}"
  local as=()
  if [ "$(id -u)" -ne 0 ]; then
    sudo -n true 2>/dev/null || give_up "$wanted"
    as=(sudo -n)
  fi
  command -v apt-get >/dev/null || give_up "$wanted"
  say "Installing ${missing[*]}"
  { ${as[@]+"${as[@]}"} apt-get update -q && ${as[@]+"${as[@]}"} env DEBIAN_FRONTEND=noninteractive apt-get install -qy --no-install-recommends "${missing[@]}"; } ||
    give_up "$wanted"
}

in_editor() { (cd "$editor" && "$@"); }

# Suites with at least one test in their sources.
suites() {
  local folder
  for folder in tests/*.Tests; do
    if grep -rqE '\[(Fact|Theory)\b' "$folder" --include='*.cs' --exclude-dir=bin --exclude-dir=obj; then basename "$folder"; fi
  done
}

test_page() {
  say "Page: tests"
  mkdir "$results/page"
  in_editor npx vitest run --reporter=default --reporter=junit --outputFile.junit="$results/page/page.xml"
  add_reports "$results/page" .test.ts
}

test_solution() {
  say "Solution: tests"
  mkdir "$results/solution"
  local expected status found_failures
  mapfile -t expected < <(suites)
  timeout -k 30s 15m dotnet test --solution ShowSafety.sln -c "$configuration" --no-build \
    --results-directory "$results/solution" --report-xunit-junit
  status=$?
  # A suite that has no tests yet makes the run end with 8.
  if [ "$status" -eq 8 ] && [ ${#expected[@]} -lt "$(ls -d tests/*.Tests | wc -l)" ]; then status=0; fi
  add_reports "$results/solution" "${expected[@]/%/.dll}"
  if [ "$status" -ne 0 ] && [ "$found_failures" -eq 0 ]; then
    echo "The test run ended with $status although no test failed." >&2
    failed=$((failed + 1))
  fi
}

# What users get: published, started from a folder that is not its own, without launch settings.
published_service_answers() {
  local folder="$results/published" line address service ok=1
  dotnet publish src/ShowSafety.Web -c "$configuration" --no-build -o "$folder" -v q || return 1
  exec 3< <(cd / && exec dotnet "$folder/ShowSafety.Web.dll" --urls http://127.0.0.1:0 --data "$results/data")
  service=$!
  read -r -t 60 -u 3 line
  address=$(grep -oE 'http://127\.0\.0\.1:[0-9]+' <<<"$line")
  node -e '
    const page = await (await fetch(process.argv[1])).text();
    const script = await fetch(new URL(page.match(/\/assets\/[^"]+\.js/)[0], process.argv[1]));
    process.exit(page.includes("<title>ShowSafety</title>") && script.ok ? 0 : 1);
  ' --input-type=module "$address" && ok=0
  kill "$service"
  exec 3<&-
  return "$ok"
}

need_tools
say "Restoring"
dotnet tool restore || give_up "The tools could not be restored."
dotnet restore ShowSafety.sln || give_up "The packages could not be restored, or a lock file does not fit."
in_editor npm ci --no-audit --no-fund || give_up "The packages of the page could not be installed."

check "Solution: format" dotnet csharpier check .
check "Page: style" in_editor npx biome ci .
check "Page: types" in_editor npx tsc --noEmit
test_page
if check "Solution: build" dotnet build ShowSafety.sln -c "$configuration" --no-restore -v q; then
  test_solution
  check "Published service answers from another folder" published_service_answers
fi
finish
