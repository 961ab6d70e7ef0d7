#!/usr/bin/env bash
# What an estimator waits for: the first answer, and a line of Java, each beside the JDK's own jshell on a script of the
# same length, in pairs of runs, one after the other; and what a change costs for each variable made from it.
# Give the number of pairs, 11 if none is given.
set -euo pipefail
home=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
pairs=${1:-11}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

printf 'area = sqft(1408.72)\norder = sheetsByArea(area, pct(10))\norder\n' >"$work/answer.ours"
printf 'var area = 1408.72;\nvar order = Math.ceil(area * 1.10 / 32);\nSystem.out.println(order);\n/exit\n' >"$work/answer.theirs"
printf 'for (int i = 12; i <= 24; i += 4) { System.out.println(sheetsByArea(sqft(i * 100.0), pct(10))); }\n' >"$work/java.ours"
printf 'for (int i = 12; i <= 24; i += 4) { System.out.println(Math.ceil(i * 100.0 * 1.10 / 32)); }\n/exit\n' >"$work/java.theirs"

milliseconds() {
  local before after
  before=$(date +%s%N)
  "$@" >/dev/null 2>&1
  after=$(date +%s%N)
  echo $(((after - before) / 1000000))
}

beside() { # what is measured, its scripts
  echo "$1:"
  for _ in $(seq "$pairs"); do
    ours=$(milliseconds "$home/sheathwright" run "$work/$2.ours")
    theirs=$(milliseconds jshell "$work/$2.theirs")
    echo "$ours $theirs" | awk '{printf "  %d ms, jshell %d ms, ratio %.2f\n", $1, $2, $1 / $2}'
  done | tee "$work/pairs"
  sed 's/.*ratio //' "$work/pairs" | sort -n |
    awk '{r[NR] = $1} END {printf "  median ratio %.2f (least %.2f, most %.2f)\n", r[int((NR + 1) / 2)], r[1], r[NR]}'
}

"$home/sheathwright" run "$work/answer.ours" >/dev/null # builds, if need be
jshell "$work/answer.theirs" >/dev/null 2>&1
beside "The first answer" answer
beside "A line of Java" java

# A chain of variables, changed at its head ever again: the time of a longer script less that of a shorter one.
followers=100
changes=50
{
  echo 'side = 42 ft'
  for i in $(seq "$followers"); do echo "area$i = side * $i ft + 3 sqft"; done
} >"$work/chain.once"
{
  cat "$work/chain.once"
  for i in $(seq "$changes"); do echo "side = $((42 + i)) ft"; done
} >"$work/chain.again"
for _ in $(seq "$pairs"); do
  once=$(milliseconds "$home/sheathwright" run "$work/chain.once")
  again=$(milliseconds "$home/sheathwright" run "$work/chain.again")
  echo $((again - once))
done | sort -n | awk -v all=$((followers * changes)) \
  '{t[NR] = $1} END {printf "A change, for each variable made from it: %.2f ms\n", t[int((NR + 1) / 2)] / all}'
