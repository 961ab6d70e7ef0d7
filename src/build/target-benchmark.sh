#!/bin/sh
# The target over 60 rafters of 12 stations, beside the same linear program handed whole to the library.
set -eu
cd "$(dirname "$0")/../.."
mvn -q -B -Pbenchmark test-compile
mvn -q -B -Pbenchmark exec:java -Dexec.classpathScope=test -Dexec.mainClass=sheathwright.leveling.target.TargetBenchmark
mvn -q -B -Pbenchmark exec:java -Dexec.classpathScope=test -Dexec.mainClass=sheathwright.leveling.string.PlanBenchmark
