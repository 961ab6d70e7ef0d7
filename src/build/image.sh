#!/usr/bin/env bash
# Makes the download: the program with a Java of its own, so that whoever unpacks it needs neither Java nor Maven. It comes from
# the JDK that is on the path, and runs on the kind of machine that made it.
# Leaves target/image/sheathwright-VERSION-SYSTEM.zip, its SHA-256 beside it, and the folder that is packed in it.
# usage: src/build/image.sh
set -euo pipefail
home=$(cd -P "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
target=$home/target
out=$target/image
work=$out/work
notices=$home/src/build/licenses

fail() {
  echo "image.sh: $*" >&2
  exit 1
}

command -v jpackage >/dev/null && command -v jlink >/dev/null || fail "jlink and jpackage are not on the path; install a whole JDK"
version=$(sed -n 's:.*<version>\(.*\)</version>.*:\1:p' "$home/pom.xml" | head -1)
system=$(uname -s | tr '[:upper:]' '[:lower:]')-$(uname -m)
name=sheathwright-$version-$system
image=$out/sheathwright

"$home/sheathwright" --version >/dev/null # builds, if need be
rm -rf "$out"
mkdir -p "$work/input"
cp -R "$target/sheathwright.jar" "$target/lib" "$work/input"

# All that a line of Java may use (java.se), the compiler of the prompt, and what reads a jar as a folder; no tool but java.
jlink --add-modules java.se,jdk.jshell,jdk.unsupported,jdk.zipfs,jdk.charsets \
  --strip-java-debug-attributes --no-header-files --no-man-pages --output "$work/runtime"
find "$work/runtime/bin" -type f ! -name java ! -name java.exe ! -name '*.dll' -delete
"$work/runtime/bin/java" -XX:+UseSerialGC -Xshare:dump >/dev/null 2>&1 || echo "image.sh: no archive of Java's own classes" >&2

# The second compiler stays, unlike in ./sheathwright: one launcher has to do for a prompt and for a search.
jpackage --type app-image --name sheathwright --app-version "$version" --dest "$out" \
  --input "$work/input" --main-jar sheathwright.jar --main-class sheathwright.cli.Main --runtime-image "$work/runtime" \
  --java-options "-XX:+UseSerialGC -Xshare:auto" \
  --java-options "-Dlog4j.provider=org.apache.logging.log4j.simple.internal.SimpleProvider" \
  --java-options "-Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8"

# What a library says of itself, else what we know of it; a library of which nothing is known makes no download.
license() {
  local jar=$1 library row license copyright how
  library=$(basename "$jar" .jar | sed 's/-[0-9].*//')
  mkdir -p "$image/licenses/$library"
  (cd "$image/licenses/$library" && jar xf "$jar" META-INF) || return
  find "$image/licenses/$library" -type f ! -iname 'LICENSE*' ! -iname 'NOTICE*' -delete
  find "$image/licenses/$library/META-INF" -maxdepth 1 -type f -exec mv {} "$image/licenses/$library" \;
  rm -rf "$image/licenses/$library/META-INF"
  [ ! -e "$image/licenses/$library/LICENSE" ] && [ ! -e "$image/licenses/$library/LICENSE.txt" ] || return 0
  row=$(grep "^$library," "$notices/third-party.csv") || fail "nothing is known of the license of $library: add it to $notices/third-party.csv"
  license=$(cut -d, -f2 <<<"$row")
  copyright=$(cut -d, -f3- <<<"$row")
  {
    echo "$library: $license. Copyright, and how it is known: $copyright"
    echo
    if [ "$license" = Apache-2.0 ]; then cat "$home/LICENSE"; else cat "$notices/$license.txt"; fi
  } >"$image/licenses/$library/LICENSE.txt"
}
for jar in "$target"/lib/*.jar; do
  license "$jar"
done
cp "$home/LICENSE" "$image/licenses/LICENSE"
legal=$(find "$image" -type d -name legal | head -1)
echo "Java's own licenses lie in ${legal#"$image/"}." >"$image/licenses/java.txt"

mkdir -p "$image/completion"
java -cp "$target/sheathwright.jar:$target/lib/*" "$home/src/build/java/CompletionScript.java" >"$image/completion/sheathwright.bash"
mkdir -p "$image/demo-data"
cp -R "$home/demo-data/quince-hollow" "$image/demo-data"
cp "$home/src/build/image-readme.txt" "$image/README.txt"

java "$home/src/build/java/PackedFolder.java" "$image" "$out/$name.zip"
(cd "$out" && if command -v sha256sum >/dev/null; then sha256sum "$name.zip"; else shasum -a 256 "$name.zip"; fi >"$name.zip.sha256")
rm -rf "$work"
echo "wrote target/image/$name.zip ($(du -m "$out/$name.zip" | cut -f1) MB) and its SHA-256"
