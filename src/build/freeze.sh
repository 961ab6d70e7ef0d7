#!/bin/sh
# Freezes what the arguments of every certified case give, when a release is made: a later number that differs must be explained in
# src/main/resources/sheathwright/proof/changed.csv, or the build fails. Explanations of the release before stay in that file.
# Usage: src/build/freeze.sh
set -eu
cd "$(dirname "$0")/../.."
mvn -q -B test-compile
version=$(sed -n 's|^  <version>\(.*\)</version>$|\1|p' pom.xml | head -1)
mvn -q -B exec:exec -Dexec.classpathScope=test -Dexec.executable=java \
  -Dexec.args="-Djava.awt.headless=true -Duser.timezone=UTC -cp %classpath sheathwright.proof.FrozenNumbers $version"
