#!/usr/bin/env bash
# Kills the program at random moments of each of its commands that write (quote, issue, agree, change-order, take-in, close, season, a
# session's save, fill -o): once what died is put right, everything is as before or everything as after, and nothing else is left.
# Two of three kills wait until writing has begun. 207 kills take some 20 minutes of a quiet machine.
# usage: src/build/kills.sh [TIMES [SEED]]   TIMES of each of the nine
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
mvn -B -ntp -Druns="${1:-23}" -Dseed="${2:-17}" -Dtest=KilledRunsTest test
