#!/usr/bin/env bash
# A firm's years, each from its seed: houses from the call to the invoice, with runs that die, full disks, misspelled words, sorted and
# resaved tables, other languages and days. The gate plays twenty; 10,000 take half a day. After every hundred a line says how far it
# came, how often each thing happened, and which seeds broke. Go on with the seed behind the last of that line; repeat one by: src/build/years.sh 1 SEED
# A seed that found something goes into src/test/resources/sheathwright/year/seeds.csv and is played ever after.
# usage: src/build/years.sh [YEARS [FIRST]]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
mvn -B -ntp -Dyears="${1:-10000}" -Dfirst="${2:-1}" -Dtest=YearTest -Dsurefire.failIfNoSpecifiedTests=false test
