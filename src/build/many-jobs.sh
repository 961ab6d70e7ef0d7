#!/usr/bin/env bash
# How long many jobs take in one run of quote, and how much memory: variants of a demo job, made by src/build/java/ManyJobs.java,
# in a Java that gets 256 MB. Prints each tenth of the way the seconds since the start and the process's memory, then both at the end.
# usage: src/build/many-jobs.sh [COUNT]
set -euo pipefail
home=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
program=${SHEATHWRIGHT:-$home/sheathwright}
count=${1:-100}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

java "$home/src/build/java/ManyJobs.java" "$home/demo-data/quince-hollow" "$count" "$work/jobs"
"$program" --version >/dev/null # builds, if need be
export JDK_JAVA_OPTIONS=-Xmx256m
start=$(date +%s)
"$program" quote "$work"/jobs/* >"$work/said" 2>"$work/wrong" &
pid=$!
peak=0
done_jobs() { grep -c "the homeowner pays" "$work/said" || true; }
next=$((count / 10))
while kill -0 $pid 2>/dev/null; do
  now=$(awk '/VmRSS/ { print int($2 / 1024) }' /proc/$pid/status 2>/dev/null) || true
  peak=$((${now:-0} > peak ? ${now:-0} : peak))
  if [ "$(done_jobs)" -ge "$next" ]; then
    echo "$(done_jobs) jobs: $(($(date +%s) - start)) s, ${now:-0} MB"
    next=$((next + (count > 9 ? count / 10 : 1)))
  fi
  sleep 0.5
done
wait $pid && status=0 || status=$?
grep -v NOTE: "$work/wrong" | tail -3 || true
echo "$(done_jobs) of $count jobs in $(($(date +%s) - start)) s, at most $peak MB, exit status $status"
