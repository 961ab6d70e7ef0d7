#!/usr/bin/env bash
# How time grows with the size of the work, from a tenth of the usual size to ten times it: seconds of processor time, and the
# ratio to the tenth of the size. Everything is made anew, the same each time: jobs and scripts by src/build/java/GrowingWork.java.
# usage: src/build/growth-benchmark.sh [KIND ...]   KIND is marks, rafters, script, fill, jobs, layout, leveling or
# cutting; else all of them.
# With all of them, the table is kept in docs/pictures/growth.csv, from which src/build/pictures.sh draws the chart.
set -euo pipefail
home=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
program=${SHEATHWRIGHT:-$home/sheathwright}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

growing() {
  java "$home/src/build/java/GrowingWork.java" "$@"
}

# Seconds of processor time, the system's own included.
seconds() {
  local TIMEFORMAT='%U %S'
  { time "$program" "$@" >"$work/said" 2>&1 || { cat "$work/said" >&2 && exit 1; }; } 2>&1 |
    awk '{print $1 + $2}'
}

once() { # a kind, its size
  local made=$work/$1$2
  case $1 in
    marks | rafters)
      growing "$1" "$2" "$made"
      seconds quote "$made" -o "$work/out" --force
      ;;
    script | layout | leveling | cutting)
      growing "$1" "$2" "$made"
      seconds run "$made"
      ;;
    fill)
      awk -v rows="$2" 'BEGIN {
        print "support_spacing_in,edge_spacing_in,field_spacing_in"
        for (i = 0; i < rows; i++) print (i % 3 ? 16 : 24) "," 4 + i % 3 "," 6 + i % 7
      }' >"$made.csv"
      seconds fill nails_per_sheet "$made.csv" -o "$work/filled.xlsx" --force
      ;;
    jobs)
      java "$home/src/build/java/ManyJobs.java" "$home/demo-data/quince-hollow" "$2" "$made"
      seconds quote "$made"/*
      ;;
  esac
}

measured() {
  local kind=$1 size before='' now
  shift
  for size in "$@"; do
    now=$(once "$kind" "$size")
    echo "$kind $size $now $before" |
      awk '{printf "%-8s %6d %8.1f s", $1, $2, $3; if ($4) printf "   %5.1f times the tenth", $3 / $4; print ""}'
    echo "$kind,$size,$now" >>"$work/growth.csv"
    before=$now
  done
}

"$program" --version >/dev/null # builds, if need be
echo "kind,size,seconds" >"$work/growth.csv"
for kind in ${*:-marks rafters script fill jobs layout leveling cutting}; do
  case $kind in
    marks) measured marks 20 200 2000 ;;
    rafters) measured rafters 4 40 400 ;;
    script) measured script 30 300 3000 ;;
    fill) measured fill 500 5000 50000 ;;
    jobs) measured jobs 1 10 100 ;;
    layout | leveling | cutting) measured "$kind" 4 40 400 ;;
  esac
done
[ $# -gt 0 ] || cp "$work/growth.csv" "$home/docs/pictures/growth.csv"
