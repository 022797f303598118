#include "core/files.hpp"

#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "support/catch.hpp"

using namespace standin;
namespace fs = std::filesystem;

namespace files_test {

// A folder of its own that goes away again.
struct Folder {
    fs::path path = fs::temp_directory_path() / ("standin-files-" + std::to_string(::getpid()));
    Folder() { fs::create_directories(path); }
    ~Folder() { fs::remove_all(path); }
    std::string operator/(const char* name) const { return (path / name).string(); }
};

TEST_CASE("what is written is read back, every byte") {
    const Folder folder;
    const std::string text("a\0b\r\n\xFF", 6);
    REQUIRE(write_file(folder / "f", text));
    CHECK(read_file(folder / "f").value() == text);
    REQUIRE(write_file(folder / "f", "short"));
    CHECK(read_file(folder / "f").value() == "short");
    REQUIRE(write_file(folder / "f", ""));
    CHECK(read_file(folder / "f").value().empty());
    CHECK(std::distance(fs::directory_iterator(folder.path), {}) == 1);  // nothing is left beside it
}

TEST_CASE("a file that is not there, or is a folder, is not found") {
    const Folder folder;
    for (const auto& path : {folder / "none", folder.path.string(), folder / "none/deeper"}) {
        const auto text = read_file(path);
        REQUIRE_FALSE(text);
        CHECK(text.error().trouble == Trouble::not_found);
        CHECK(text.error().where == path);
    }
}

TEST_CASE("a file beyond 16 MB is refused without being kept") {
    const Folder folder;
    std::ofstream(folder / "big") << std::string((std::size_t{16} << 20) + 1, 'x');
    const auto text = read_file(folder / "big");
    REQUIRE_FALSE(text);
    CHECK(text.error().trouble == Trouble::bad_data);
}

TEST_CASE("what cannot be written says so and leaves nothing") {
    const Folder folder;
    for (const auto& path : {folder / "none/f", folder.path.string()}) {
        const auto done = write_file(path, "text");
        REQUIRE_FALSE(done);
        CHECK(done.error().trouble == Trouble::unwritable);
    }
    CHECK(fs::is_empty(folder.path));
    CHECK_FALSE(fs::exists(folder.path.string() + ".part"));
}

}  // namespace files_test
