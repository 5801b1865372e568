#!/bin/sh
# What the built folder needs that only the program itself can make: start-files.sh FOLDER.
# First the classes that a run of a demo boat loads, of which the launcher makes its archive.
# Sorted and on one thread, so that the same source leaves the same list.
set -eu
folder=$1
mkdir -p "$folder/start"
list=$(mktemp)
out=$(mktemp -d)
trap 'rm -rf "$list" "$out"' EXIT
"${JAVA_HOME:+$JAVA_HOME/bin/}java" -Xshare:off -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:DumpLoadedClassList="$list" \
    -cp "$folder/lib/*" org.garboard.cli.Garboard run "$folder/demo/outboard-22/job.xml" --threads 1 --out "$out/set" > "$out/log" 2>&1 \
    || { cat "$out/log" >&2; exit 1; }
sed -n 's/^\([^# @][^ ]*\).*/\1/p' "$list" | LC_ALL=C sort -u > "$folder/start/classes.lst"
# what the Tab key completes in bash, from the same classes
"${JAVA_HOME:+$JAVA_HOME/bin/}java" -Xshare:auto -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp "$folder/lib/*" \
    picocli.AutoComplete --force --name garboard --completionScript "$folder/start/completion.bash" org.garboard.cli.Garboard
# pages for man, likewise
"${JAVA_HOME:+$JAVA_HOME/bin/}java" -Xshare:auto -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp "$folder/lib/*" \
    org.garboard.cli.BuildFiles "$folder/share/man/man1"
