#!/bin/sh
# Our cutting searches beside general solvers. Usage: src/build/cutting-benchmark.sh FOLDER [alone] | ours | short
# FOLDER holds the published sets, which are not part of this repository. With "alone", only ours
# runs, by processor time: what to lay side by side before and after a change. "ours" are the lists
# made for this project, "short" a few of them.
set -eu
case ${1:?name the folder with the published sets, or say ours or short} in
  ours | short) folder=$1 ;;
  *) folder=$(cd "$1" && pwd) ;;
esac
alone=${2:-}
cd "$(dirname "$0")/../.."
mvn -q -B -Pbenchmark test-compile
for program in stick.StickBenchmark sheet.SheetBenchmark; do
  mvn -q -B -Pbenchmark exec:java -Dexec.classpathScope=test \
    -Dexec.mainClass="sheathwright.cutting.$program" -Dexec.args="$folder $alone"
done
