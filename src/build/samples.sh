#!/usr/bin/env bash
# Makes every finished sample anew, byte for byte: the workbooks of the jobs in demo-data, the change orders of those that have been
# opened, two letterheads to restyle, and the whole life of one job with all of its documents.
# usage: src/build/samples.sh
set -euo pipefail

home=$(cd -P "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
program=${SHEATHWRIGHT:-$home/sheathwright}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$home"

# What a job's list of facts says under a key.
fact() {
  awk -F, -v key="$2" '$1 == key { print $2 }' "$1"
}

# A copy of a job is issued, agreed to and opened; the change order that follows is its sample.
opened() {
  local job=$1 name=${1##*/}
  local copy=$work/$name
  mkdir "$copy"
  cp "$job"/*.csv "$copy"
  "$program" quote "$copy" --issue --on "$(fact "$job/job.csv" quote_date)"
  "$program" agree "$copy" --on "$(fact "$job/job.csv" quote_date)"
  cp "$copy/job.csv" "$work/job.csv"
  cp "$job"/opened/*.csv "$copy"
  awk -F, -f src/build/facts.awk "$job/opened/job.csv" "$work/job.csv" >"$copy/job.csv"
  "$program" change-order "$copy" --on "$(fact "$job/opened/job.csv" opened_on)"
  cp "$copy"/change-order-*.xlsx "workbooks/$name"
}

for facts in demo-data/*/job.csv; do
  job=${facts%/job.csv}
  "$program" quote "$job" -o "workbooks/${job##*/}" --force
  [ ! -d "$job/opened" ] || opened "$job"
done

for document in quote invoice; do
  "$program" letterhead "$document" -o "workbooks/templates/$document-letterhead.xlsx" --force
done

src/build/whole-life.sh
