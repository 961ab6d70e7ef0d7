#!/bin/sh
# Half and double of a constant, by counted work. Usage:
#   src/build/tuning.sh MEASURING FOLDER MILLIONS CLASS.CONSTANT[=VALUE;VALUE] ...
# MEASURING is a class of src/benchmark such as sheathwright.cutting.stick.StickWork, FOLDER holds the
# published sets, MILLIONS are the turns of loops and calls of methods that each list may take.
set -eu
: "${4:?name what measures, the folder of the published sets, the millions of turns, and constants}"
cd "$(dirname "$0")/../.."
mvn -q -B -Pbenchmark test-compile
nice -n 19 mvn -q -B -Pbenchmark exec:exec -Dexec.classpathScope=test -Dexec.executable=java \
  -Dexec.args="-Xmx2g -cp %classpath sheathwright.tuning.Tuning $*"
