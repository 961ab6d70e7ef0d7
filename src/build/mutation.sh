#!/usr/bin/env bash
# Plants errors in a room's code, one at a time, and asks the room's own tests, the ranges that every function states and the
# certified cases to find each: the share found beside its goal, 95 % where all else rests on a room, 85 % elsewhere, and every error
# that lives without a reason in src/build/survivors.tsv. All rooms take some hours.
# usage: src/build/mutation.sh [ROOM ...]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
rooms=("$@")
[ $# -gt 0 ] || rooms=(figure catalog pricing published wood roof loads sheathing fastening framing leveling forecast cutting)
mvn -B -ntp -q test-compile
for room in "${rooms[@]}"; do
  mvn -B -ntp -q -Pmutation -Droom="$room" -Dthreads="${THREADS:-$(nproc)}" org.pitest:pitest-maven:mutationCoverage >"target/mutation-$room.log" 2>&1 ||
    { tail -20 "target/mutation-$room.log" >&2; exit 1; }
done
java src/build/java/MutationScore.java target/mutation "${rooms[@]}"
