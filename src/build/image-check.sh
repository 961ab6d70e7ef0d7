#!/usr/bin/env bash
# Uses the download that src/build/image.sh made as somebody would who has neither Java nor Maven: unpacked in a folder with a
# space in its name, nothing on the path, no home. The checksum, the first answer at the prompt, a quote, a filled table, and what the shell completes.
# usage: src/build/image-check.sh
set -euo pipefail
home=$(cd -P "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
zip=$(ls "$home"/target/image/sheathwright-*.zip)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
place="$work/a place"

fail() {
  echo "image-check.sh: $*" >&2
  exit 1
}

# Runs a program of the download with an empty folder for a path.
bare() {
  (cd "$place/sheathwright" && env -i PATH="$work/empty" TERM=xterm LC_ALL=C.UTF-8 "$@")
}

(cd "$(dirname "$zip")" && sha256sum -c "$zip.sha256" >/dev/null) || fail "the checksum differs"
mkdir -p "$place" "$work/empty"
unzip -q "$zip" -d "$place"
! bare java -version 2>/dev/null || fail "there is a java on the path"

said=$(printf 'area = sqft(1408.72)\nsheetsByArea(area, pct(10))\nexit\n' |
  (cd "$place/sheathwright" && script -qec "env -i PATH='$work/empty' TERM=dumb LC_ALL=C.UTF-8 bin/sheathwright" /dev/null))
grep -q '49 sheets' <<<"$said" || fail "no answer at the prompt: $said" # 1408.72 x 1.10 / 32 is 48.4

bare bin/sheathwright quote demo-data/quince-hollow -o "$work/quote" || fail "no quote"
[ -s "$work/quote/estimate.xlsx" ] && [ -s "$work/quote/quote.xlsx" ] || fail "the quote wrote no workbooks"

printf 'deck_area_sf,waste_pct\n704,0\n1973.26,12\n' >"$work/areas.csv"
filled=$(bare bin/sheathwright fill sheets_by_area "$work/areas.csv")
[ "$(sed -n '2p;3p' <<<"$filled" | cut -d, -f3 | paste -sd' ')" = "22 70" ] || fail "a table was filled wrong: $filled" # 22.0; 69.07

# What the shell makes of the beginning of a word behind "fill".
completed() {
  bash -c 'source "$1"; COMP_WORDS=(sheathwright fill "$2"); COMP_CWORD=2; _complete_sheathwright; echo "${COMPREPLY[*]}"' \
    bash "$place/sheathwright/completion/sheathwright.bash" "$1" 2>/dev/null
}
[ "$(completed nails_per_s)" = nails_per_sheet ] || fail "nails_per_s is completed as \"$(completed nails_per_s)\""
[ "$(completed --for)" = --force ] || fail "--for is completed as \"$(completed --for)\""
for library in "$place"/sheathwright/lib/app/lib/*.jar; do
  library=$(basename "$library" .jar | sed 's/-[0-9].*//')
  ls "$place/sheathwright/licenses/$library"/LICENSE* >/dev/null || fail "$library has no license"
done
echo "the download answers, quotes, fills and completes with neither Java nor Maven on the path"
