#!/bin/sh
# Samples, books, values, cases and results against the schemas, with a second validator: ajv. Installs it in the build
# folder. Skipped (77) where there is no npm, or it cannot be reached.
set -eu
command -v npm >/dev/null && command -v node >/dev/null || exit 77
folder=$BUILD/ajv
mkdir -p "$folder"
cp "$TOP/tests/schema/validate.cjs" "$folder/"
cd "$folder"
[ -d node_modules/ajv ] && [ -d node_modules/js-yaml ] ||
    npm install --silent --no-audit --no-fund ajv@8 js-yaml@4 >/dev/null 2>&1 || exit 77
fit() { schema=$1; shift; node validate.cjs "$TOP/docs/schemas/$schema.json" "$@"; }
fit design "$TOP"/samples/*/*.yaml
fit book "$TOP"/rules/*/*/book.yaml
fit values "$TOP"/rules/*/*/values.yaml
fit cases "$TOP"/rules/*/*/cases/*.yaml
for name in standing failing unfinished; do
    "$PLUMBRULE" check "$TOP/samples/quill-hollow/$name.yaml" --book marrow-bay --format json -o "$name.json" || true
    fit result "$name.json"
done
# One that takes anything would be no validator.
printf 'title: x\nsite: {exposur: B}\n' >wrong.yaml
! fit design wrong.yaml >/dev/null
