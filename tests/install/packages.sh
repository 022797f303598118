# Sourced by examples/first-batch.sh and tests/run.sh: the Debian 12 packages, and a function that installs those not there yet.

build_packages=(g++ cmake ninja-build nlohmann-json3-dev libspdlog-dev libboost-dev libexpected-dev libcli11-dev
    libutfcpp-dev libxml2-dev libglpk-dev)
test_packages=(catch2 locales python3 python3-jsonschema python3-scipy clang-format clang-tidy graphviz
    chromium chromium-driver python3-selenium)
command -v npm >/dev/null || test_packages+=(nodejs npm)  # a newer one may be there already

# need_packages NAME...: says nothing when all are there; on another system the build itself says what it lacks.
need_packages() {
    command -v dpkg-query >/dev/null && command -v apt-get >/dev/null || return 0
    local package missing=()
    for package in "$@"; do
        [[ $(dpkg-query -W -f '${db:Status-Status} ' "$package" 2>/dev/null) == *installed* ]] || missing+=("$package")
    done
    ((${#missing[@]})) || return 0
    local apt=(env DEBIAN_FRONTEND=noninteractive apt-get -qq -o Acquire::Retries=3 -o DPkg::Lock::Timeout=300)
    if ((EUID != 0)); then
        if ! command -v sudo >/dev/null; then
            echo "Missing packages; as root, run: apt-get install ${missing[*]}" >&2
            return 1
        fi
        apt=(sudo "${apt[@]}")
    fi
    echo "Installing ${missing[*]}"
    local log
    log=$(mktemp)
    if ! { "${apt[@]}" update && "${apt[@]}" -y --no-install-recommends install "${missing[@]}"; } >"$log" 2>&1 </dev/null; then
        cat "$log" >&2
        rm -f "$log"
        return 1
    fi
    rm -f "$log"
}
