# What each step stands on; sourced by the scripts.
BUILD_PACKAGES="gcc libc6-dev make cmake pkg-config libyaml-dev liblua5.4-dev libjansson-dev libxml2-dev nettle-dev libgeos-dev"
TEST_PACKAGES="clang clang-format clang-tidy cppcheck valgrind lua5.4 lua-unit lua-cjson lua-check lua-yaml units python3 python3-shapely python3-jsonschema python3-yaml git parallel procps man-db dpkg-dev chromium libxml2-utils poppler-utils"
# node and npm may stand outside of Debian's packages.
command -v node >/dev/null && command -v npm >/dev/null || TEST_PACKAGES="$TEST_PACKAGES nodejs npm"
MEASURE_PACKAGES="gcovr"
