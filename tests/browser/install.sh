#!/bin/sh
# Puts the packages that the browser tests stand on into BUILD/node, once; several tests may ask at a time.
# They are tools of the tests alone: nothing of them is part of the product.
set -eu
build=${BUILD:?the folder to install into}
mkdir -p "$build/node"
exec 9>"$build/node.lock"
flock 9
[ -e "$build/node/whole" ] && exit 0
command -v node >/dev/null && command -v npm >/dev/null || { echo "the browser tests need node and npm" >&2; exit 1; }
cd "$build/node"
[ -e package.json ] || echo '{"private":true,"type":"module"}' >package.json
npm install --no-audit --no-fund --ignore-scripts --loglevel=error \
    playwright-core axe-core ajv ajv-formats yaml @microsoft/sarif-multitool >install.log 2>&1 || {
    cat install.log >&2
    echo "the packages of the browser tests could not be installed: is there a network?" >&2
    exit 1
}
chmod u+x node_modules/@microsoft/sarif-multitool-*/Sarif.Multitool
touch whole
