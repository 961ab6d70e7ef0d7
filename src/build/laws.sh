#!/usr/bin/env bash
# More span, load or sag never helps, and more waste never asks for less: random cases of each function; and the rows of each demo job's
# tables in another order.
# usage: src/build/laws.sh [TRIES [SEED]]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
mvn -B -ntp -Dtries="${1:-2000}" -Dseed="${2:-17}" -Dtest='LawsTest,SameAnswerTest' test
