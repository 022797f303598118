#include "support/places.hpp"

#include <filesystem>

namespace {

/// The sources this program was built beside, wherever the checkout has been moved to since; else those it was configured from.
std::filesystem::path root() {
    std::error_code none;
    const auto beside = std::filesystem::read_symlink("/proc/self/exe", none).parent_path().parent_path().parent_path();
    return std::filesystem::exists(beside / "tests" / "run.sh", none) ? beside : std::filesystem::path(STANDIN_SOURCE);
}

}  // namespace

std::string test_data_folder() { return (root() / "tests").string(); }
std::string examples_folder() { return (root() / "examples").string(); }
std::string knowledge_folder() { return (root() / "knowledge").string(); }
