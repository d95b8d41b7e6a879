#!/bin/sh
# Makes the application folder start quickly on Linux: launchers of our own, lists of the classes that a start needs, archives of them.
#
#   quick-start.sh FOLDER JAVA CLASSPATH
#
# FOLDER is the application folder, JAVA and CLASSPATH run the window without a screen.
set -e
here=$(dirname "$0")
folder=$1
app=$folder/lib/app
one=$app/one.classes
rm -f "$app"/*.classes
for name in simmerpoint Simmerpoint; do
    rm -f "$folder/bin/$name"
    cp "$here/launcher.sh" "$folder/bin/$name"
    chmod 755 "$folder/bin/$name"
done
cp "$here/archives.sh" "$app/archives.sh"

# Lines of the class list of one run, without those that only a window without a screen needs.
gather() {
    grep -v monocle "$one" >>"$app/all.classes"
    rm "$one"
}

keep() {
    awk '!seen[$0]++' "$app/all.classes" >"$app/$1.classes"
    rm "$app/all.classes"
}

terminal() {
    "$folder/lib/runtime/bin/java" -XX:TieredStopAtLevel=1 -XX:DumpLoadedClassList="$one" \
        -cp "$app/simmerpoint.jar" simmerpoint.command.Main "$@" </dev/null >/dev/null
    gather
}

terminal
terminal --version
terminal --help
terminal check "$app/scenarios/lake-hut-evening.yaml"
terminal pan --rays 2k
terminal aim --rays 2k
terminal day "$app/scenarios/lake-hut-evening.yaml" --rays 2k
terminal compare --vary dish.hub=60mm,80mm --rays 2k
terminal compare --vary dish.hub=60mm,80mm --rays 2k --quick
terminal budget --rays 2k
terminal report "$app/scenarios/tea-kitchen.yaml" --rays 2k --html -
terminal design "$app/scenarios/tea-kitchen.yaml" --rays 2k --level boil --panels ..24 --diameter 1m..1.2m
keep terminal

"$2" -Dglass.platform=Monocle -Dmonocle.platform=Headless -Dprism.order=sw -Djava.awt.headless=true \
    -XX:DumpLoadedClassList="$one" -cp "$app/simmerpoint.jar:$3" simmerpoint.viewer.app.Launcher \
    --shot "$app/shot.png" --size 1024x700 2>/dev/null
rm "$app/shot.png"
gather
keep window

sh "$app/archives.sh"
