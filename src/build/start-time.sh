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

measured() { # milliseconds by the clock, and of the processor
  local TIMEFORMAT='%R %U %S'
  { time "$@" >/dev/null 2>&1; } 2>&1 | awk '{printf "%d %d\n", $1 * 1000, ($2 + $3) * 1000}'
}

median() { # of a column of the pairs
  awk -v column="$1" '{print $column}' "$work/pairs" | sort -n |
    awk -v what="$2" '{r[NR] = $1} END {printf "  median ratio by the %s %.2f (least %.2f, most %.2f)\n", what, r[int((NR + 1) / 2)], r[1], r[NR]}'
}

beside() { # what is measured, its scripts
  echo "$1:"
  for _ in $(seq "$pairs"); do
    ours=$(measured "$home/sheathwright" run "$work/$2.ours")
    theirs=$(measured jshell "$work/$2.theirs")
    echo "$ours $theirs" | awk '{printf "%.2f %.2f  %d ms (processor %d ms), jshell %d ms (%d ms)\n", $1 / $3, $2 / $4, $1, $2, $3, $4}'
  done | tee "$work/pairs"
  median 1 clock
  median 2 processor
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
  once=$(measured "$home/sheathwright" run "$work/chain.once")
  again=$(measured "$home/sheathwright" run "$work/chain.again")
  echo $((${again% *} - ${once% *}))
done | sort -n | awk -v all=$((followers * changes)) \
  '{t[NR] = $1} END {printf "A change, for each variable made from it: %.2f ms\n", t[int((NR + 1) / 2)] / all}'
