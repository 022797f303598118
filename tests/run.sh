#!/usr/bin/env bash
# Installs what is missing, builds, runs every test and ends on ctest's own summary. Arguments go to ctest: tests/run.sh -R unit
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
source "$root/tests/install/packages.sh"
need_packages "${build_packages[@]}" "${test_packages[@]}"

export CMAKE_BUILD_PARALLEL_LEVEL=${CMAKE_BUILD_PARALLEL_LEVEL:-$(nproc)} CMAKE_GENERATOR=${CMAKE_GENERATOR:-Ninja}
cmake -S "$root" -B "$root/build" --log-level=WARNING -DCMAKE_BUILD_TYPE=Release -DSTANDIN_TESTS=ON -DSTANDIN_TOGETHER=ON -DSTANDIN_WERROR=ON >/dev/null
echo "Building"
cmake --build "$root/build" -- --quiet
exec ctest --test-dir "$root/build" -j "$CMAKE_BUILD_PARALLEL_LEVEL" --output-on-failure --no-tests=error "$@"
