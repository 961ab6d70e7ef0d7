#!/usr/bin/env bash
# How long from the shell to the first answer, beside the JDK's own jshell on a script of the same length: pairs of
# runs, one after the other, and the median of their ratios. Give the number of pairs, 11 if none is given.
set -euo pipefail
home=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
pairs=${1:-11}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

printf 'area = sqft(1408.72)\norder = sheetsByArea(area, pct(10))\norder\n' >"$work/ours.jsh"
printf 'var area = 1408.72;\nvar order = Math.ceil(area * 1.10 / 32);\nSystem.out.println(order);\n/exit\n' >"$work/theirs.jsh"

seconds() {
  local before after
  before=$(date +%s%N)
  "$@" >/dev/null 2>&1
  after=$(date +%s%N)
  echo $(((after - before) / 1000000))
}

"$home/sheathwright" run "$work/ours.jsh" >/dev/null # builds, if need be
jshell "$work/theirs.jsh" >/dev/null 2>&1
for _ in $(seq "$pairs"); do
  ours=$(seconds "$home/sheathwright" run "$work/ours.jsh")
  theirs=$(seconds jshell "$work/theirs.jsh")
  echo "$ours $theirs" | awk '{printf "%d ms, jshell %d ms, ratio %.2f\n", $1, $2, $1 / $2}'
done | tee "$work/pairs"
sed 's/.*ratio //' "$work/pairs" | sort -n |
  awk '{r[NR] = $1} END {printf "median ratio %.2f (least %.2f, most %.2f)\n", r[int((NR + 1) / 2)], r[1], r[NR]}'
