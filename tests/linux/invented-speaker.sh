#!/bin/sh
# A device's voice that speaks to nobody, and behaves as its language says. What it was told stands in $SPOKEN.
echo "as $1" >>"$SPOKEN"
case $1 in
none) exit 1 ;;
hangs) exec sleep 1000 ;;
esac
echo ready
while read -r number text; do
    echo "$number $text" >>"$SPOKEN"
    [ "$number" != stop ] || continue
    case $1 in
    mute) continue ;;
    dies) exit 3 ;;
    fails) echo "failed $number"; continue ;;
    endless) echo "begun $number"; continue ;;
    slow) echo "begun $number"; echo "ended $((number - 1))"; continue ;; # the end of what was stopped
    esac
    echo "begun $number"
    sleep 0.1
    echo "ended $number"
done
