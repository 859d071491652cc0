#!/bin/sh
# Installs from Debian what is named and not there yet. Needs root or sudo only where something is missing.
set -eu
missing=""
for package in "$@"; do
    dpkg-query -W -f '${Status}' "$package" 2>/dev/null | grep -q 'install ok installed' || missing="$missing $package"
done
[ -z "$missing" ] && exit 0
as_root=""
if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || { echo "needs root or sudo to install:$missing" >&2; exit 1; }
    as_root=sudo
fi
echo "installing:$missing" >&2
export DEBIAN_FRONTEND=noninteractive
$as_root apt-get update -qq >&2
# shellcheck disable=SC2086
$as_root apt-get install -y -qq --no-install-recommends $missing >&2
