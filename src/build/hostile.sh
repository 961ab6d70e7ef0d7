#!/usr/bin/env bash
# Workbooks made for mischief before every command that reads one, in 256 MB: prints the status, the CPU time and the line of each.
# The gate tries a few of the light ones.
# usage: src/build/hostile.sh
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
JDK_JAVA_OPTIONS=-Xmx256m mvn -B -ntp -Dhostile=all -Dtest='HostileTest#aHostileWorkbook_doesNoHarm' test
