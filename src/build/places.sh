#!/usr/bin/env bash
# Writes where that does not go well: a full disk, folders and files that may not be written, links, folders where a file is wanted,
# two runs at once. Each is to end with the right status and one line, and leave everything as it was and nothing beside it.
# Full disks and read-only folders are mounted, so it runs as root, in a mount space of its own that ends with it.
# usage: src/build/places.sh      SHEATHWRIGHT=... another program than ./sheathwright
set -euo pipefail

home=$(cd -P "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
if [ -z "${IN_OWN_SPACE:-}" ]; then
  [ "$(id -u)" = 0 ] || { echo "places.sh: run it as root" >&2; exit 1; }
  IN_OWN_SPACE=yes exec unshare --mount --propagation private "${BASH_SOURCE[0]}" "$@"
fi
program=${SHEATHWRIGHT:-$home/sheathwright}
work=$(mktemp -d)
trap 'chattr -i -R "$work" 2>/dev/null || true; umount "$work"/* 2>/dev/null || true; rm -rf "$work"' EXIT
cd "$work"
wrong=0

# What stands in a folder: names with the sums of their bytes, drafts too, links as links.
held() {
  (cd "$1" && find . -type f -exec sha256sum {} + -o -type l -printf '%l  %p\n' | sort)
}

# is WHAT STATUS WORDS FOLDER COMMAND...: it ends so, says one line with these words, and where refused the folder is as before.
is() {
  local what=$1 status=$2 words=$3 folder=$4 before after got=0 said
  shift 4
  before=$(held "$folder")
  said=$("$@" 2>&1 >/dev/null) || got=$?
  after=$(held "$folder")
  if [ "$got" != "$status" ] || ! grep -q -- "$words" <<<"${said:-nothing}" ||
    [ "$(grep -c -v '^question:' <<<"$said")" -gt 1 ]; then
    echo "WRONG  $what: status $got: $said"
    wrong=$((wrong + 1))
  elif [ "$status" != 0 ] && [ "$before" != "$after" ]; then
    echo "WRONG  $what: it left other files"
    diff <(echo "$before") <(echo "$after") || true
    wrong=$((wrong + 1))
  elif grep -q '\.part$\|\.old$' <<<"$after"; then
    echo "WRONG  $what: it left a draft"
    wrong=$((wrong + 1))
  else
    echo "right  $what: $got ${said:+: $said}"
  fi
}

job() {
  mkdir -p "$1"
  cp "$home"/demo-data/quince-hollow/*.csv "$1"
}
printf 'support_spacing_in,edge_spacing_in,field_spacing_in\n16,6,12\n' >cases.csv
fill() { "$program" fill nails_per_sheet cases.csv -o "$1" --force; }
limited() { (ulimit -f 40 && "$program" quote job --force); }

# A disk that is full at once, and one that is full between the two files.
mkdir full
mount -t tmpfs -o size=3m none full
job full/job
"$program" quote full/job --issue --on 2027-05-04 >/dev/null
sed -i 's/^customer,[^,]*/customer,Somebody Else of Nowhere/' full/job/job.csv
dd if=/dev/zero of=full/rest bs=1k 2>/dev/null || true
is "disk full, fill" 3 "space" full fill full/filled.xlsx
is "disk full, quote" 3 "space" full "$program" quote full/job --force
size=$(stat -c %s full/job/sent/*estimate.xlsx)
truncate -s -$((size + 8192)) full/rest
is "disk full after the first file" 3 "space" full "$program" quote full/job --force
umount full

# A file that may not grow.
job job
"$program" quote job >/dev/null
is "file too long for its limit" 3 "large" job limited

# What may not be written.
mkdir shut
job shut/job
mount --bind shut shut
mount -o remount,ro,bind shut
is "read-only folder, quote" 3 "ead-only" shut "$program" quote shut/job
is "read-only folder, season" 3 "ead-only" shut "$program" season shut
is "read-only folder, fill" 3 "ead-only" shut fill shut/filled.csv
umount shut
chattr +i job/quote.xlsx
is "one of two files is immutable" 3 "permi" job "$program" quote job --force
chattr -i job/quote.xlsx
chattr +i job
is "immutable folder" 3 "permi" job "$program" quote job --force
chattr -i job

# Links and folders.
mkdir links
job links/there
ln -s there links/job
is "job's folder is a link" 0 "" links "$program" quote links/job
ln -s nowhere links/dangling
is "job's folder is a link to nothing" 3 "" links "$program" quote links/dangling
ln -s loop links/loop
is "job's folder is a link to itself" 3 "" links "$program" quote links/loop
mkdir links/out
ln -s ../kept.xlsx links/out/estimate.xlsx
is "a file is a link to a file to come" 0 "" links "$program" quote links/there -o links/out --force
[ -L links/out/estimate.xlsx ] && [ -s links/kept.xlsx ] || { echo "WRONG  the link was written over"; wrong=$((wrong + 1)); }
ln -s gone/kept.xlsx links/lost.xlsx
is "a file is a link into no folder" 3 "folder does not exist" links fill links/lost.xlsx
ln -s round.xlsx links/round.xlsx
is "a file is a link to itself" 3 "loops" links fill links/round.xlsx
mkdir links/folder.xlsx
is "a folder in the file's place" 3 "it is a folder" links fill links/folder.xlsx
mkdir -p links/two/quote.xlsx
is "a folder in the second file's place" 3 "it is a folder" links "$program" quote links/there -o links/two --force
ln -s /dev/full links/device.csv
is "a device in the file's place" 3 "device" links fill links/device.csv

# Several runs at once: each does it or says why not, and the two files are of one run.
job many
for i in 1 2 3 4; do
  sed "s/^customer,[^,]*/customer,Owner Number $i/" job/job.csv >many/job.csv
  "$program" quote many --force >/dev/null 2>"said$i" &
  sleep 0.3
done
wait
if held many | grep -q '\.part$\|\.old$'; then
  echo "WRONG  four runs at once left a draft"
  wrong=$((wrong + 1))
else
  echo "right  four runs at once $(cat said? | sort | uniq -c | tr '\n' ' ')"
fi
owners=$(for file in estimate quote; do unzip -p many/$file.xlsx | grep -ao 'Owner Number [1-4]' | sort -u; done | sort -u | wc -l)
[ "$owners" = 1 ] || { echo "WRONG  the two files are of two runs"; wrong=$((wrong + 1)); }
is "after four runs at once" 0 "" many "$program" quote many --force

echo "$wrong wrong"
[ "$wrong" = 0 ]
