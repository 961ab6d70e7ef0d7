#!/bin/sh
# A table filled into a workbook beside the same table filled into CSV: processor seconds and their ratio, in 256 MB.
# Usage: src/build/fill-benchmark.sh [ROWS ...]; else 5,000 and 50,000 rows.
set -eu
home=$(cd "$(dirname "$0")/../.." && pwd)
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT

# Processor seconds that filling this table into this kind of file takes: those of a shell's only child.
seconds() {
  sh -c '"$0" fill nails_per_sheet "$1" -o "$2" --force 2>/dev/null && times' "$home/sheathwright" "$1" "$2" |
    tail -n 1 | tr 'ms' '  ' | awk '{ print $1 * 60 + $2 + $3 * 60 + $4 }'
}

"$home/sheathwright" functions >/dev/null # builds, if need be
export JAVA_TOOL_OPTIONS=-Xmx256m
[ $# -gt 0 ] || set -- 5000 50000
for rows in "$@"; do
  awk -v rows="$rows" 'BEGIN {
    print "support_spacing_in,edge_spacing_in,field_spacing_in,blocked_edges"
    for (i = 0; i < rows; i++) print (i % 3 ? 16 : 24) "," 4 + i % 3 "," 6 + i % 7 "," (i % 2 ? "yes" : "")
  }' >"$folder/cases.csv"
  csv=$(seconds "$folder/cases.csv" "$folder/filled.csv")
  xlsx=$(seconds "$folder/cases.csv" "$folder/filled.xlsx")
  echo "$rows $csv $xlsx" | awk '{ printf "%d rows: csv %.1f s, xlsx %.1f s, ratio %.2f\n", $1, $2, $3, $3 / $2 }'
done
