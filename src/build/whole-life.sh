#!/usr/bin/env bash
# Makes the life of one invented job anew: demo-data/whole-life/1-asked to 6-closed. Each folder is the one before it, what the
# office adds by hand (demo-data/whole-life/by-hand), and what a command writes; so two runs write the same bytes.
# usage: src/build/whole-life.sh [FOLDER]   FOLDER instead of demo-data/whole-life
set -euo pipefail

home=$(cd -P "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
hand=$home/demo-data/whole-life/by-hand
life=${1:-$home/demo-data/whole-life}
program=${SHEATHWRIGHT:-$home/sheathwright}

# Says what is done, and runs it quietly.
run() {
  echo "  $*"
  (cd "$life" && "$program" "$@" >/dev/null)
}

# The folder of a stage: the one before, and what is added by hand.
begin() {
  local stage=$1 before=${2:-}
  echo "$stage"
  rm -rf "${life:?}/$stage"
  mkdir -p "$life/$stage"
  [ -z "$before" ] || cp -R "$life/$before/." "$life/$stage"
  for file in "$hand/$stage"/*; do
    [ -e "$file" ] || continue # nothing by hand
    if [ -n "$before" ] && [ "${file##*/}" = job.csv ]; then
      awk -F, -f "$home/src/build/facts.awk" "$file" "$life/$before/job.csv" >"$life/$stage/job.csv"
    else
      cp "$file" "$life/$stage"
    fi
  done
  [ ! -f "$life/$stage/photos.csv" ] ||
    java -Djava.awt.headless=true "$home/src/build/java/DrawnPictures.java" "$life/$stage"
}

# What the office writes behind a change order that the owner approved.
approved() {
  local table=$1 order=$2 by=$3 how=$4 on=$5
  awk -F, -v OFS=, -v order="$order" -v by="$by" -v how="$how" -v on="$on" '
    NR == 1 { for (i = 1; i <= NF; i++) at[$i] = i }
    NR > 1 && $at["order"] == order {
      $at["status"] = "approved"; $at["approved_by"] = by; $at["approved_how"] = how; $at["approved_on"] = on
    }
    { print }' "$table" >"$table.new"
  mv "$table.new" "$table"
}

rm -f "$life/history.csv"
begin 1-asked
begin 2-surveyed 1-asked
begin 3-quoted 2-surveyed
run quote 3-quoted --issue --on 2027-05-04
begin 4-agreed 3-quoted
run agree 4-agreed --on 2027-05-11
begin 5-opened 4-agreed
run change-order 5-opened --on 2027-06-01
approved "$life/5-opened/orders.csv" 01 "Odalys Brackenridge-Plume" signed 2027-06-01
begin 6-closed 5-opened
run close 6-closed --on 2027-06-04
