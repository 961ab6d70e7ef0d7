#!/bin/sh
# The library's functions in the cells of LibreOffice Calc: makes the add-in out of the catalog, installs it for a user made up for
# the occasion, and calls every function headless.
# Needs the office program with its Java packages; on Debian: libreoffice-calc-nogui libreoffice-java-common ure-java
# liblibreoffice-java libunoloader-java libreoffice-dev.
# Usage: src/build/calc-addin.sh [FOLDER]; the add-in is left there as sheathwright.oxt, else in target/calc-addin.
# Exit status: 0 made and called, 1 something was wrong, 77 not run, as something is missing.
set -eu
cd "$(dirname "$0")/../.."
top=$PWD
made=${1:-target/calc-addin}

missing() {
  echo "calc add-in: NOT RUN: $1" >&2
  exit 77
}

command -v soffice >/dev/null || missing "there is no soffice"
program=$(dirname "$(readlink -f "$(command -v soffice)")")
sdk=$program/../sdk/bin
uno=$program/classes/libreoffice.jar
[ -f "$uno" ] || missing "libreoffice-java-common ure-java liblibreoffice-java libunoloader-java are not installed"
[ -f "$program/classes/unoloader.jar" ] || missing "libunoloader-java is not installed"
[ -x "$sdk/javamaker" ] || missing "libreoffice-dev is not installed"

if [ -n "${CALC_ADDIN_CLASSES:-}" ]; then # classes and jars that are there already, with colons between them
  library=$CALC_ADDIN_CLASSES
else
  [ -f target/sheathwright.jar ] || mvn -q -B -DskipTests -Dspotless.check.skip=true package
  library=$top/target/sheathwright.jar
fi

rm -rf "$made"
mkdir -p "$made/classes" "$made/oxt/lib"
made=$(cd "$made" && pwd)

# what is generated: interface, class, registry
java -cp "$library" src/addin/java/sheathwright/cell/AddInFiles.java "$made"
LD_LIBRARY_PATH=$program "$sdk/unoidl-write" "$program/types.rdb" "$program/types/offapi.rdb" "$made/cells.idl" "$made/oxt/cells.rdb"
LD_LIBRARY_PATH=$program "$sdk/javamaker" -nD -O"$made/classes" -X"$program/types.rdb" -X"$program/types/offapi.rdb" \
  "$made/oxt/cells.rdb"
javac -Xlint:all,-classfile -d "$made/classes" -cp "$made/classes:$library:$uno" \
  src/addin/java/sheathwright/cell/*.java "$made/java/sheathwright/cell/CellFunctions.java"

# what is packed: the component, the library, and what the library's functions need
if [ -n "${CALC_ADDIN_CLASSES:-}" ]; then
  (cd "${library%%:*}" && jar -c -f "$made/oxt/sheathwright.jar" .)
  jars=$(echo "${library#*:}" | tr ':' ' ')
else
  cp "$library" "$made/oxt/sheathwright.jar"
  jars=$(ls target/lib/*.jar)
fi
for jar in $jars; do
  case ${jar##*/} in commons-csv-* | commons-io-* | commons-codec-* | commons-math3-* | jts-core-*) cp "$jar" "$made/oxt/lib" ;; esac
done
{
  echo "RegistrationClassName: sheathwright.cell.CellFunctions"
  echo "UNO-Type-Path: <>"
  echo "Class-Path: sheathwright.jar $(cd "$made/oxt" && ls lib/*.jar | tr '\n' ' ')" | fold -b -w 70 | sed '2,$s/^/ /'
} >"$made/manifest"
(cd "$made/classes" && jar -c -f "$made/oxt/cells.jar" -m "$made/manifest" sheathwright/cell/Cell*.class sheathwright/cell/XCell*.class)
(cd "$made/oxt" && jar -c -M -f "$made/sheathwright.oxt" .)

# installed for nobody but this run, and called
user=$(mktemp -d)
pipe=sheathwright-$$
office=
trap '[ -z "$office" ] || kill "$office" 2>/dev/null || true; rm -rf "$user"' EXIT
everybody="-env:UNO_SHARED_PACKAGES=file://$user/shared -env:UNO_SHARED_PACKAGES_CACHE=file://$user/shared/cache"
mkdir -p "$user/shared/cache/uno_packages"
# shellcheck disable=SC2086
unopkg add --shared -env:UserInstallation="file://$user" $everybody "$made/sheathwright.oxt"
# shellcheck disable=SC2086
soffice -env:UserInstallation="file://$user" $everybody --headless --norestore --nologo "--accept=pipe,name=$pipe;urp;" >/dev/null 2>&1 &
office=$!
java -cp "$made/classes:$library:$program/classes/libreoffice.jar:$program" sheathwright.cell.CalcTrial "$pipe"
echo "calc add-in: made, installed and called: $made/sheathwright.oxt"
