#!/usr/bin/env bash
# Drags the bench of every template in Chromium and prints how long redrawn zones take, with their parts.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
work=$(mktemp -d)
trap 'kill "${service:-}" 2>/dev/null || true; rm -rf "$work"' EXIT
dotnet publish src/ShowSafety.Web -c Release -o "$work/service" -v q
dotnet build tests/ShowSafety.PageSpeed -c Release -v q
exec 3< <(exec dotnet "$work/service/ShowSafety.Web.dll" --urls http://127.0.0.1:0 --data "$work/data")
service=$!
read -r -t 60 -u 3 line
dotnet run -c Release --no-build --project tests/ShowSafety.PageSpeed -- "$(grep -oE 'http://127\.0\.0\.1:[0-9]+' <<<"$line")"
