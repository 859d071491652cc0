#!/bin/sh
# Form: every C file as clang-format lays it, every Lua file as luacheck wants it.
set -eu
top=$1
cd "$top"
clang-format --version | grep -q 'version 14\.' || { echo "the house's form is clang-format 14's" >&2; exit 1; }
find core include tests -name '*.[ch]' -print0 | xargs -0 clang-format --dry-run -Werror
luacheck -q rules tests
