#!/bin/sh
# Runs inside the phone's root: display, buses, feedback and the phone shell, of that size. FOLDER holds the sockets and logs.
# IDLE: seconds without a touch after which the screen goes dark, 0 for never.
# Usage: shell.sh FOLDER DISPLAY-NUMBER WIDTHxHEIGHT IDLE [PHOSH-OPTION]...
set -eu
folder=$1 number=$2 size=$3 idle=$4
shift 4
export HOME="$folder/home" XDG_RUNTIME_DIR="$folder" DISPLAY=":$number" LC_ALL=C.UTF-8
export XDG_CURRENT_DESKTOP=Phosh:GNOME XDG_SESSION_TYPE=wayland XDG_DATA_DIRS=/usr/local/share:/usr/share
export GSETTINGS_BACKEND=keyfile GDK_BACKEND=wayland
mkdir -p "$HOME" /run/dbus
rm -f "/tmp/.X$number-lock" "/tmp/.X11-unix/X$number"
Xvfb ":$number" -screen 0 "${size}x24" -noreset -nolisten tcp >"$folder/xvfb.log" 2>&1 &
rm -f /run/dbus/pid
dbus-daemon --system --fork >"$folder/system-bus.log" 2>&1
DBUS_SESSION_BUS_ADDRESS="unix:path=$folder/bus"
export DBUS_SESSION_BUS_ADDRESS
dbus-daemon --session --fork --address="$DBUS_SESSION_BUS_ADDRESS" >"$folder/bus.log" 2>&1
gsettings set org.gnome.desktop.a11y.applications screen-keyboard-enabled true
gsettings set org.gnome.desktop.notifications show-banners false # they would lie over the app
gsettings set org.gnome.desktop.session idle-delay "$idle"
G_MESSAGES_DEBUG=all /usr/libexec/feedbackd >"$folder/feedbackd.log" 2>&1 &
until [ -S "/tmp/.X11-unix/X$number" ]; do sleep 0.1; done
cat >"$folder/phoc.ini" <<INI
[core]
xwayland=false

[output:X11-1]
mode = $size
scale = 1
INI
# Of the whole session the parts that decide when the screen goes dark: the manager, and who hands it programs' wishes.
mkdir -p "$HOME/.config/gnome-session/sessions" "$folder/autostart"
printf '[GNOME Session]\nName=Phone\nRequiredComponents=org.gnome.SettingsDaemon.ScreensaverProxy;\n' >"$HOME/.config/gnome-session/sessions/phone.session"
cp /etc/xdg/autostart/org.gnome.SettingsDaemon.ScreensaverProxy.desktop "$folder/autostart"
cat >"$folder/inner.sh" <<'INNER'
/usr/libexec/gnome-session-binary --autostart="$XDG_RUNTIME_DIR/autostart" --session=phone --disable-acceleration-check >"$XDG_RUNTIME_DIR/session.log" 2>&1 &
gdbus wait --session --timeout=60 org.freedesktop.ScreenSaver
/usr/libexec/phosh "$@" >"$XDG_RUNTIME_DIR/phosh.log" 2>&1 &
# The keyboard wants the shell on the bus first.
gdbus wait --session --timeout=60 org.freedesktop.Notifications
squeekboard >"$XDG_RUNTIME_DIR/squeekboard.log" 2>&1 &
wait
INNER
exec env WLR_BACKENDS=x11 WLR_RENDERER=pixman phoc -S -C "$folder/phoc.ini" -E "sh $folder/inner.sh $*" >"$folder/phoc.log" 2>&1
