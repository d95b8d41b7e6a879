#!/bin/sh
# Starts the packed program on Linux: as simmerpoint in the terminal, as Simmerpoint the window. A launcher of jpackage would first
# ask the system's package manager whose it is, a tenth of a second at every start.
self=$0
case $self in
    */*) ;;
    *) self=./$self ;;
esac
while [ -L "$self" ]; do
    target=$(readlink "$self")
    case $target in
        /*) self=$target ;;
        *) self=${self%/*}/$target ;;
    esac
done
bin=${self%/*}
app=$bin/../lib/app
java=$bin/../lib/runtime/bin/java

# An archive of classes holds for the place where it was made; elsewhere Java's own has to do.
archive() {
    if [ -r "$app/$1.jsa" ] && read -r made <"$app/archives.at" && [ "$made/simmerpoint.jar" -ef "$app/simmerpoint.jar" ]; then
        archive=$app/$1.jsa
    else
        archive=$bin/../lib/runtime/lib/server/classes.jsa
    fi
}

# Where the system would put it elsewhere each time, all its pointers would have to be mended.
place="-XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0"

if [ "${self##*/}" = Simmerpoint ]; then
    archive window
    exec "$java" $place -XX:SharedArchiveFile="$archive" -cp "$app/simmerpoint.jar" simmerpoint.viewer.app.Launcher "$@"
fi
archive terminal
case " $* " in
    *" design "*) compiler= ;; # long enough for all optimisations to pay
    *)
        compiler="-XX:TieredStopAtLevel=1 -XX:Tier3InvocationThreshold=50 -XX:Tier3MinInvocationThreshold=25
            -XX:Tier3CompileThreshold=500 -XX:Tier3BackEdgeThreshold=8000 -XX:C1MaxInlineSize=18 -XX:C1MaxInlineLevel=5"
        ;;
esac
exec "$java" $place -XX:SharedArchiveFile="$archive" $compiler -XX:+UseSerialGC -Xmn64m -cp "$app/simmerpoint.jar" \
    simmerpoint.command.Main "$@"
