#!/usr/bin/env bash
# Builds standin and asks it the question it was made for.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
source "$root/tests/install/packages.sh"
need_packages "${build_packages[@]}"

export CMAKE_BUILD_PARALLEL_LEVEL=${CMAKE_BUILD_PARALLEL_LEVEL:-$(nproc)} CMAKE_GENERATOR=${CMAKE_GENERATOR:-Ninja}
echo "Building"
cmake -S "$root" -B "$root/build" --log-level=WARNING -DCMAKE_BUILD_TYPE=Release -DSTANDIN_TESTS=OFF -DSTANDIN_TOGETHER=ON >/dev/null
cmake --build "$root/build" --target standin -- --quiet

cd "$root/examples/garden"
cat <<'STORY'

A maker's green sausage wants spinach, sorrel and serranos. This week the garden has none of them:
it has chard, curly kale, rocket and jalapeños. The parsley is there, and stays.

  standin adapt formula.txt --have inventory.txt

STORY
exec "$root/build/cli/standin" adapt formula.txt --have inventory.txt
