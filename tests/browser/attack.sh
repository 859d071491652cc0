#!/bin/sh
# Markup and script in every text fact and every name of a design and its catalogues: nothing runs, and each text
# stands as it was written, in the HTML report, in JUnit and in SARIF.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
sh "$here/install.sh"
room=$(mktemp -d)
trap 'rm -rf "$room"' EXIT
node "$here/attack-design.mjs" "$TOP" "$room"
cd "$room"
for format in html junit sarif; do
    "$PLUMBRULE" check design.yaml --book marrow-bay --format "$format" -o "report.$format" || [ $? -le 2 ] ||
        { "$PLUMBRULE" check design.yaml --book marrow-bay | head -40 >&2; exit 1; }
done
xmllint --noout report.html report.junit
node "$here/attack.mjs" "$room"
