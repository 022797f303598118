#!/usr/bin/env bash
# Does every C++ file follow .clang-format?    check_format.sh CLANG_FORMAT
cd "$(dirname "${BASH_SOURCE[0]}")/../.." || exit 1
find engine cli tests \( -name '*.cpp' -o -name '*.hpp' \) -print0 | sort -z | xargs -0 "${1:-clang-format}" --dry-run -Werror
