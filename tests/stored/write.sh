#!/bin/sh
# Writes the stored reports anew. Look at the difference before it is committed: each line is a demand of the code.
set -eu
top=$(cd "$(dirname "$0")/../.." && pwd)
STORED=write TOP=$top PLUMBRULE=${PLUMBRULE:-$top/build/plumbrule} \
    LUA_PATH="$top/tests/lua/?.lua;/usr/share/lua/5.4/?.lua;/usr/share/lua/5.4/?/init.lua;;" \
    lua5.4 "$top/tests/lua/test_electrical_editions.lua"
git -C "$top" diff --stat -- tests/stored
