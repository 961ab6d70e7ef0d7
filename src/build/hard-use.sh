#!/usr/bin/env bash
# Every reader on spoiled input from a seeded generator: no stack trace, no hang, nothing half written, the exit status right. The
# gate takes a short form of it. 10,000 inputs on each reader take some hours; a fault is told with its reader and input, and
# comes again by: src/build/hard-use.sh 1 INPUT READER
# usage: src/build/hard-use.sh [INPUTS [FIRST [READER]]]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
mvn -B -ntp -Dinputs="${1:-10000}" -Dfirst="${2:-0}" -Dreaders="${3:-}" -Dtest=HardUseTest test
