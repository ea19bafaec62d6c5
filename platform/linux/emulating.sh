#!/bin/sh
# Runs a command while the kernel hands arm64 programs to qemu, in any root; as root.
# Usage: sh platform/linux/emulating.sh COMMAND [ARGUMENT]...
set -eu
kinds=/proc/sys/fs/binfmt_misc
[ -e $kinds/register ] || mount -t binfmt_misc binfmt_misc $kinds
if [ ! -e $kinds/qemu-aarch64 ]; then
    # F: the emulator is opened now, so that a root without it will do.
    printf '%s' ':qemu-aarch64:M::\x7fELF\x02\x01\x01\x00\x00\x00\x00\x00\x00\x00\x00\x00\x02\x00\xb7\x00:\xff\xff\xff\xff\xff\xff\xff\x00\xff\xff\xff\xff\xff\xff\xff\xff\xfe\xff\xff\xff:/usr/bin/qemu-aarch64-static:F' >$kinds/register
    trap 'echo -1 >$kinds/qemu-aarch64' EXIT
fi
"$@"
