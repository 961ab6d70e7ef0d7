#!/usr/bin/env bash
# The whole of what the gate takes a sample of: every input of every demo estimate changed and followed in its workbook, every
# value of every drop-down, every column of what was solved in every job, every finding that stops, every cell of every table of a
# job made wrong, every published cutting list, every filled table by every rule of a workbook, a wider window, more mistakes for
# an audit to find. Takes some hours.
# usage: src/build/sweep.sh [TEST ...]   instead of all of them
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
tests=("$@")
[ $# -gt 0 ] || tests=(PerturbationTest DropDownsTest SolvedInputsTest StopsFollowTest QuoteSweepTest StickListsTest PublishedSheetsTest
  WorkbookRulesTest BookRulesTest FileRulesTest StrictFileTest AccessibilityTest TextFitsTest PrintedSizeTest
  TerminalTest AuditTrialTest)
mvn -B -ntp -Dsheathwright.sweep=all -Dtest="$(IFS=,; echo "${tests[*]}")" test
