#!/bin/sh
# Installs into a folder, and builds and runs the example there as others would: by pkg-config, against the static
# library, by the CMake package; then looks into the Debian package. Needs BUILD, a finished build, and TOP.
set -eu
room=$BUILD/embed
rm -rf "$room"
mkdir -p "$room"
tree=$room/tree
cmake --install "$BUILD" --prefix "$tree" >"$room/log"

wrong() {
    echo "WRONG: $*" >&2
    exit 1
}
for file in bin/plumbrule include/plumbrule/plumbrule.h share/man/man1/plumbrule.1 share/plumbrule/rules/codes/nec/book.yaml \
    share/plumbrule/samples/catalogue/modules.yaml; do
    [ -s "$tree/$file" ] || wrong "$file is not installed"
done
[ -z "$(find "$tree" -name '*.sh')" ] || wrong "scripts of the source tree are installed"

# Nothing but what the header promises can be reached.
shared=$(find "$tree" -name libplumbrule.so)
static=$(find "$tree" -name libplumbrule.a)
promised=$(sed -n 's/^PLUMBRULE_EXPORT.* \**\(plumbrule_[a-z]*\)(.*/\1/p' "$TOP/include/plumbrule/plumbrule.h" | sort)
# Names with two underlines are the sanitizers'.
names() { sed -n 's/^[0-9a-f]\{8,\} [A-Za-z] //p' | grep -v '^__' | sort; }
[ "$(nm -D --defined-only "$shared" | names)" = "$promised" ] || wrong "names in the shared library"
[ "$(nm -g --defined-only "$static" | names)" = "$promised" ] ||
    wrong "names in the static library"

design=$tree/share/plumbrule/samples/quill-hollow/standing.yaml
# run NAME PROGRAM…: it reads what is installed, and says so.
run() {
    name=$1
    shift
    "$@" "$tree/share/plumbrule/rules" "$tree/share/plumbrule/samples/catalogue" marrow-bay 2026-08-03 "$design" \
        "$tree/nowhere.yaml" >"$room/said" || wrong "$name ends with $?"
    cat >"$room/expected" <<END
$("$tree/bin/plumbrule" --version)
$design: stands, a report of one line: yes
  books read in the folder given: yes
$tree/nowhere.yaml: unread, a report of one line: yes
  books read in the folder given: no
END
    diff "$room/expected" "$room/said" >&2 || wrong "what $name says"
}
PKG_CONFIG_PATH=$(dirname "$(find "$tree" -name plumbrule.pc)")
export PKG_CONFIG_PATH
libraries=$(dirname "$shared")
strict="-std=c17 -Wall -Wextra -Wpedantic -Werror ${SANITIZE:+-fsanitize=$SANITIZE}"
example=$TOP/tests/embed/check_design.c
# shellcheck disable=SC2046,SC2086
{
    $CC $strict "$example" -o "$room/by_pkg_config" $(pkg-config --cflags --libs plumbrule)
    $CC $strict "$example" -o "$room/by_static" $(pkg-config --cflags plumbrule) "$static" \
        $(pkg-config --static --libs plumbrule | sed 's/-lplumbrule//')
}
run "the shared library" env LD_LIBRARY_PATH="$libraries" "$room/by_pkg_config"
run "the static library" "$room/by_static"
cmake -S "$TOP/tests/embed/package" -B "$room/package" -DCMAKE_PREFIX_PATH="$tree" -DCMAKE_C_COMPILER="$CC" \
    -DCMAKE_C_FLAGS="${SANITIZE:+-fsanitize=$SANITIZE}" >>"$room/log"
cmake --build "$room/package" >>"$room/log" || wrong "the CMake package"
run "the CMake package, shared" "$room/package/with_shared"
run "the CMake package, static" "$room/package/with_static"

# The manual page is whole, and tells each command and option that the help tells.
if command -v man >/dev/null; then
    LC_ALL=C.UTF-8 MANROFFSEQ='' MANWIDTH=100 man --warnings -l "$tree/share/man/man1/plumbrule.1" >"$room/manual" 2>"$room/warnings"
    [ ! -s "$room/warnings" ] || wrong "troff warns: $(cat "$room/warnings")"
    for command in $("$tree/bin/plumbrule" --help | sed -n 's/^  \([a-z]\+\)  .*/\1/p'); do
        grep -q "plumbrule $command" "$room/manual" || wrong "the manual page lacks $command"
        for option in $("$tree/bin/plumbrule" "$command" --help | sed -n 's/^  .*\(--[a-z-]\+\).*/\1/p' | grep -v help); do
            grep -q -e "$option" "$room/manual" || wrong "the manual page lacks $option"
        done
    done
fi

# Under another root, as packages are made.
DESTDIR=$room/root cmake --install "$BUILD" >>"$room/log"
[ -n "$(find "$room/root" -path '*/bin/plumbrule')" ] || wrong "DESTDIR is not heeded"
if command -v dpkg-deb >/dev/null && [ -z "${SANITIZE:-}" ]; then
    (cd "$BUILD" && cpack -G DEB -B "$room/deb" >>"$room/log" 2>&1) || wrong "cpack: $(tail -n 5 "$room/log")"
    deb=$(echo "$room"/deb/*.deb)
    dpkg-deb -f "$deb" Depends | grep -q liblua5.4 || wrong "what the package depends on"
    dpkg-deb -x "$deb" "$room/unpacked"
    program=$(find "$room/unpacked" -path '*/bin/plumbrule')
    "$program" check "$design" --book marrow-bay --on 2026-08-03 --books "$tree/share/plumbrule/rules" >/dev/null ||
        wrong "the program of the package ends with $?"
fi
