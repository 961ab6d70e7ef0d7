#!/bin/sh
# How good an audit is: mistakes of eleven kinds made in our workbooks, and how many it finds; workbooks that were only filled in and
# saved by other programs, and how many it alarms about. The table goes into docs/audit.md. LibreOffice (soffice) must be installed.
# Usage: src/build/audit-table.sh [MISTAKES [HONEST_BY_POI [HONEST_BY_LIBREOFFICE]]]; else 500, 100 and 17, a quarter of an hour.
set -eu
cd "$(dirname "$0")/../.."
table=$(mktemp)
trap 'rm -f "$table" "$table.page"' EXIT
mvn -q -B test-compile
nice -n 10 mvn -q -B exec:exec -Dexec.classpathScope=test -Dexec.executable=java \
  -Dexec.args="-Djava.awt.headless=true -Duser.timezone=UTC -cp %classpath sheathwright.workbook.audit.AuditTable ${1:-500} ${2:-100} ${3:-17}" >"$table"
awk -v table="$table" '
  /^<!-- table -->$/ { print; print ""; while ((getline line < table) > 0) print line; inside = 1; next }
  /^<!-- end of table -->$/ { print ""; inside = 0 }
  !inside { print }' docs/audit.md >"$table.page"
cp "$table.page" docs/audit.md
