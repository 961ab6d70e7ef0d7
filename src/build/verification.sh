#!/bin/sh
# Runs every certified case and writes what came of it: docs/verification.md, and beside evidence.csv each function's line, the formulas by
# which a value's function is told, and the tests that hold functions without a case. A test fails where they are out of date.
# Usage: src/build/verification.sh
set -eu
cd "$(dirname "$0")/../.."
run() {
  mvn -q -B exec:exec -Dexec.classpathScope=test -Dexec.executable=java \
    -Dexec.args="-Djava.awt.headless=true -Duser.timezone=UTC -cp %classpath sheathwright.workbook.proof.WrittenEvidence"
}
mvn -q -B test-compile
run
# The page tells of tests that the first run has written beside it.
mvn -q -B process-resources
run
