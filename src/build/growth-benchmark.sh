#!/usr/bin/env bash
# How time grows with the size of a job: seconds of CPU for marks, surveyed rafters and lines of a script, and the ratio
# to the tenth of the size. Everything is made anew by src/build/java/GrowingWork.java, the same each time.
set -euo pipefail
home=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

work_of() {
  java "$home/src/build/java/GrowingWork.java" "$@"
}

# Seconds of CPU, the system's own included.
seconds() {
  local TIMEFORMAT='%U %S'
  { time "$home/sheathwright" "$@" >"$work/said" 2>&1 || { cat "$work/said" >&2 && exit 1; }; } 2>&1 |
    awk '{print $1 + $2}'
}

measured() {
  local kind=$1 size before=
  shift
  for size in "$@"; do
    local now
    if [ "$kind" = script ]; then
      work_of script "$size" "$work/script.jsh"
      now=$(seconds run "$work/script.jsh")
    else
      work_of "$kind" "$size" "$work/$kind$size"
      now=$(seconds quote "$work/$kind$size" -o "$work/out" --force)
    fi
    echo "$kind $size $now $before" |
      awk '{printf "%-8s %6d %8.1f s", $1, $2, $3; if ($4) printf "   %5.1f times the tenth", $3 / $4; print ""}'
    before=$now
  done
}

"$home/sheathwright" --version >/dev/null # builds, if need be
measured marks 20 200 2000
measured rafters 4 40 400
measured script 30 300 3000
