#!/bin/sh
# Makes the archives of classes beside the program, which hold for the place where it lies now; to be run again when it was moved.
set -e
app=$(cd -P -- "$(dirname -- "$0")" && pwd)
for each in terminal window; do
    rm -f "$app/$each.jsa"
    "$app/../runtime/bin/java" -Xshare:dump -XX:+UseG1GC -XX:SharedClassListFile="$app/$each.classes" \
        -XX:SharedArchiveFile="$app/$each.jsa" -cp "$app/simmerpoint.jar" >/dev/null 2>&1
done
printf '%s\n' "$app" >"$app/archives.at"
