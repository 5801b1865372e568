#!/bin/sh
# What the built folder needs that only the program itself can make: start-files.sh FOLDER.
# First the classes that a run of a demo boat and a probe load, of which the launcher makes its archive.
# Sorted and on one thread, so that the same source leaves the same list.
set -eu
folder=$1
mkdir -p "$folder/start"
# in one order, whatever that of the folder is: it decides which service of several is found first
jars=$(printf '%s\n' "$folder"/lib/*.jar | LC_ALL=C sort | tr '\n' ':')
list=$(mktemp)
out=$(mktemp -d)
trap 'rm -rf "$list" "$out"' EXIT
printf 'run\trun "%s" --threads 1 --out "%s"\nprobe\tprobe "%s" --at 4,0.2\n' "$folder/demo/outboard-22/job.xml" "$out/set" "$folder/demo/outboard-22/offsets.csv" \
    | "${JAVA_HOME:+$JAVA_HOME/bin/}java" -Xshare:off -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:DumpLoadedClassList="$list" \
    -cp "$jars" org.garboard.cli.Garboard session --threads 1 > "$out/log" 2>&1
[ "$(grep -c "$(printf '\texit\t0')" "$out/log")" -eq 2 ] || { cat "$out/log" >&2; exit 1; }
# classes that the runtime makes as it goes are numbered as they come, and cannot be archived, but for lambdas, which are told by where they stand
{
    sed -n 's/^\([^# @][^ ]*\).*/\1/p' "$list" | grep -v -E '^(com/sun/proxy|jdk/proxy|jdk/internal/reflect/Generated)' | LC_ALL=C sort -u
    grep '^@lambda' "$list" | LC_ALL=C sort -u
} > "$folder/start/classes.lst"
# what the Tab key completes in bash, and pages for man
"${JAVA_HOME:+$JAVA_HOME/bin/}java" -Xshare:auto -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp "$jars" org.garboard.cli.BuildFiles "$folder"
