#!/usr/bin/env bash
# How soon it answers, in one run: ratios of processor time, ours to a named baseline, of pairs that run one after the other.
# usage: src/build/speed.sh [short] [PART ...]   PART is start, cold, warm, many, layout, cutting or leveling; else all of them.
# "short" takes three pairs and small lists. CUTTING_INSTANCES names the folder of the published cutting lists, if they are to run.
set -euo pipefail
home=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
ours=$home/sheathwright
job=$home/demo-data/quince-hollow
short=
[ "${1:-}" != short ] || { short=short && shift; }
parts=${*:-start cold warm many layout cutting leveling}
pairs=${short:+3}
pairs=${pairs:-11}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
options=(-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto
  -Dlog4j.provider=org.apache.logging.log4j.simple.internal.SimpleProvider
  -Dorg.apache.logging.log4j.simplelog.level=OFF)

# Seconds of processor time, the system's own included.
seconds() {
  local TIMEFORMAT='%U %S'
  { time "$@" >/dev/null 2>&1; } 2>&1 | awk '{print $1 + $2}'
}

# A line of the table: what, the baseline, and pairs of seconds from standard input.
told() {
  awk -v what="$1" -v beside="$2" '
    {ratio[NR] = $1 / $2; ours[NR] = $1; theirs[NR] = $2}
    function middle(of, count,   i, j, kept) {
      for (i = 2; i <= count; i++) {
        kept = of[i]
        for (j = i - 1; j > 0 && of[j] > kept; j--) of[j + 1] = of[j]
        of[j + 1] = kept
      }
      return of[int((count + 1) / 2)]
    }
    END {
      r = middle(ratio, NR)
      printf "%-34s %6.2f s   %-46s %6.2f s   %5.2f (%.2f to %.2f)\n", what, middle(ours, NR), beside, middle(theirs, NR), r, ratio[1], ratio[NR]
    }'
}

# Ours beside theirs, each the name of a function of this script.
beside() {
  for _ in $(seq "$pairs"); do
    echo "$(seconds "$3") $(seconds "$4")"
  done | told "$1" "$2"
}

# What an estimator waits for.
start() {
  printf 'area = sqft(1408.72)\norder = sheetsByArea(area, pct(10))\norder\n' >"$work/answer.ours"
  printf 'var area = 1408.72;\nvar order = Math.ceil(area * 1.10 / 32);\nSystem.out.println(order);\n/exit\n' >"$work/answer.theirs"
  printf 'for (int i = 12; i <= 24; i += 4) { System.out.println(sheetsByArea(sqft(i * 100.0), pct(10))); }\n' >"$work/java.ours"
  printf 'for (int i = 12; i <= 24; i += 4) { System.out.println(Math.ceil(i * 100.0 * 1.10 / 32)); }\n/exit\n' >"$work/java.theirs"
  answer() { "$ours" run "$work/answer.ours"; }
  jshell_answer() { jshell "$work/answer.theirs"; }
  java_line() { "$ours" run "$work/java.ours"; }
  jshell_line() { jshell "$work/java.theirs"; }
  beside "an estimator's first answer" "jshell, a script of that length" answer jshell_answer
  beside "a line of Java" "jshell, the same line" java_line jshell_line
  # A chain of variables, changed at its head again and again: a longer script less a shorter one.
  {
    echo 'side = 42 ft'
    for i in $(seq 100); do echo "area$i = side * $i ft + 3 sqft"; done
  } >"$work/once"
  {
    cat "$work/once"
    for i in $(seq 50); do echo "side = $((42 + i)) ft"; done
  } >"$work/again"
  echo "$(seconds "$ours" run "$work/once") $(seconds "$ours" run "$work/again")" |
    awk '{printf "a change: %.2f ms for each of 100 variables made from it\n", ($2 - $1) / 5}'
}

# The programs beside which workbooks are measured, and what stands in the workbooks.
bare() {
  [ ! -f "$work/bare.jar" ] || return 0
  local sources=$home/src/benchmark/java/sheathwright
  javac -d "$work/classes" -cp "$home/target/sheathwright.jar" "$sources"/workbook/*.java "$sources"/job/*.java \
    "$sources"/cutting/Stopwatch.java
  jar --create --file "$work/bare.jar" -C "$work/classes" .
  classes=$home/target/sheathwright.jar:$work/bare.jar
  "$ours" quote "$job" -o "$work/quoted" >/dev/null 2>&1
  java "${options[@]}" -cp "$classes" sheathwright.workbook.CellListing \
    "$work/quoted/estimate.xlsx" "$work/estimate.txt" "$work/quoted/quote.xlsx" "$work/quote.txt"
}

bare_program() {
  java "${options[@]}" "$@" -cp "$classes" sheathwright.workbook.BareWorkbook \
    "$work/estimate.txt" "$work/bare-estimate.xlsx" "$work/quote.txt" "$work/bare-quote.xlsx"
}

# A quote from its tables to its two files, beside a POI program that writes the cells, styles and names of both, and nothing
# else; each with an archive of its classes.
cold() {
  bare
  bare_program -XX:DumpLoadedClassList="$work/list" -Xlog:disable
  java "${options[@]}" -Xshare:dump -XX:SharedClassListFile="$work/list" -XX:SharedArchiveFile="$work/bare.jsa" -Xlog:disable \
    -cp "$classes" >/dev/null 2>&1
  quoted() { "$ours" quote "$job" -o "$work/quoted" --force; }
  bare_archived() { bare_program -XX:SharedArchiveFile="$work/bare.jsa" -Xlog:disable; }
  beside "a cold quote, read and checked" "bare POI, the same cells, styles and names" quoted bare_archived
}

# The same in a program that has been running for a while, the job already worked out.
warm() {
  bare
  for each in quince-hollow mistwater-cottage tallow-end; do
    "$ours" quote "$home/demo-data/$each" -o "$work/$each" >/dev/null 2>&1
    java "${options[@]}" -cp "$classes" sheathwright.workbook.CellListing \
      "$work/$each/estimate.xlsx" "$work/$each.1" "$work/$each/quote.xlsx" "$work/$each.2"
    java "${options[@]:1}" -cp "$classes" sheathwright.workbook.WarmWorkbooks "$pairs" "$home/demo-data/$each" "$work/$each.1" "$work/$each.2" |
      told "warm workbooks, $each" "bare POI, the same cells, styles and names"
  done
}

many() {
  "$home/src/build/many-jobs.sh" "$([ -n "$short" ] && echo 20 || echo 1000)" | tail -1
}

# A hip house's layout, and what ended the search for the fewest sheets.
layout() {
  bare
  java "${options[@]:1}" -cp "$classes" sheathwright.job.LayoutBenchmark \
    "$home"/demo-data/{cinder-brook,cinder-brook,cinder-brook,dunmarrow-hall,quince-hollow}
}

cutting() {
  if [ -n "${CUTTING_INSTANCES:-}" ] && [ -z "$short" ]; then
    "$home/src/build/cutting-benchmark.sh" "$CUTTING_INSTANCES"
  else
    "$home/src/build/cutting-benchmark.sh" "${short:-ours}"
  fi | grep -i "median\|proven"
}

# The target over 60 rafters of 12 stations, beside the same linear program handed whole to the library.
leveling() {
  cd "$home"
  mvn -q -B -Pbenchmark test-compile
  for program in target.TargetBenchmark string.PlanBenchmark; do
    mvn -q -B -Pbenchmark exec:java -Dexec.classpathScope=test -Dexec.mainClass="sheathwright.leveling.$program"
  done
}

"$ours" --version >/dev/null # builds, if need be
printf '%-34s %8s   %-46s %8s   %s\n' "ours" "" "baseline" "" "median ratio (least to most)"
for part in $parts; do
  "$part"
done
