#!/bin/sh
# The HTML report as people meet it: in a browser, at a desk and on a telephone, by keyboard, on paper. Needs
# PLUMBRULE (the program), TOP (the source tree) and BUILD (where node's packages go).
set -eu
here=$(cd "$(dirname "$0")" && pwd)
sh "$here/install.sh"
room=$(mktemp -d)
trap 'rm -rf "$room"' EXIT
cd "$TOP/samples"
for name in standing failing unfinished; do
    "$PLUMBRULE" check "quill-hollow/$name.yaml" --book marrow-bay --format html -o "$room/$name.html" || [ $? -le 2 ]
    xmllint --noout "$room/$name.html"
done
printf 'title: "half\n' >"$room/unread.yaml"
"$PLUMBRULE" check "$room/unread.yaml" --book marrow-bay --format html -o "$room/unread.html" && exit 1
xmllint --noout "$room/unread.html"
node "$here/report.mjs" "$room/standing.html" "$room/failing.html" "$room/unfinished.html" "$room/unread.html"
