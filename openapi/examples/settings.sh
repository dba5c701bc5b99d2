#!/bin/sh
# Asks settings for a snare from the top, in one line, and picks the gain out of it.
#   settings.sh [ADDRESS]
# The address may stand in STANDOFF_URL too.
# Exits 1 where the service refuses, with its problem document on standard error.
set -eu
service=${1:-${STANDOFF_URL:-http://127.0.0.1:8080}}
question='source=core/snare&placement=top&distance_m=0.05&microphone=core/ldc-multi-1&preamp=core/preamp-16'

answer=$(mktemp)
trap 'rm -f "$answer"' EXIT
status=$(curl -s -o "$answer" -w '%{http_code}' -H 'Accept: text/plain' "$service/v1/settings?$question")
if [ "$status" != 200 ]; then
  cat "$answer" >&2
  exit 1
fi

cat "$answer"
gain=$(tr ' ' '\n' <"$answer" | sed -n 's/^gain_db=//p')
[ -n "$gain" ] || { echo 'no gain in the answer' >&2; exit 1; }
echo "set the preamp to $gain dB"
