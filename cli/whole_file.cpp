#include "whole_file.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <filesystem>

namespace standin::cli {
namespace {

namespace fs = std::filesystem;

class Descriptor {
public:
    explicit Descriptor(int number) : number_(number) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor() { close(); }

    bool open() const { return number_ >= 0; }
    int number() const { return number_; }
    bool close() {
        const int was = number_;
        number_ = -1;
        return was < 0 || ::close(was) == 0;
    }

private:
    int number_;
};

bool write_all(int descriptor, std::string_view text) {
    while (!text.empty()) {
        const auto written = ::write(descriptor, text.data(), text.size());
        if (written < 0 && errno == EINTR) continue;
        if (written <= 0) return false;
        text.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

Unwritten cannot_make(const std::string& path, const char* what) { return {{Trouble::unwritable, what, path, {}}, false}; }
Unwritten cannot_fill(const std::string& path) { return {{Trouble::unwritable, "cannot write this file", path, {}}, true}; }

// A name that nobody has yet, in the folder of the file to come.
Descriptor beside(const fs::path& target, mode_t mode, std::string& name) {
    constexpr int tries = 100;
    for (int i = 0; i < tries; ++i) {
        name = (target.parent_path() / (".standin-" + std::to_string(::getpid()) + "-" + std::to_string(i))).string();
        const int descriptor = ::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, mode);
        if (descriptor >= 0 || errno != EEXIST) return Descriptor(descriptor);
    }
    return Descriptor(-1);
}

bool same_file(const fs::path& a, const fs::path& b) {
    std::error_code ignored;
    return fs::equivalent(a, b, ignored);
}

}  // namespace

std::optional<Error> would_harm(const std::string& path, const std::vector<std::string>& inputs, const std::string& knowledge) {
    for (const auto& input : inputs)
        if (input != "-" && same_file(path, input))
            return Error{Trouble::unwritable, "this is what is read: it would be overwritten", path, {"give the result a name of its own"}};
    std::error_code trouble;
    if (!knowledge.empty() && fs::exists(path, trouble))
        for (auto file = fs::recursive_directory_iterator(knowledge, trouble); !trouble && file != fs::recursive_directory_iterator();
             file.increment(trouble))
            if (same_file(path, file->path()))
                return Error{Trouble::unwritable, "this is one of the records that are read: it would be overwritten", path, {}};
    return std::nullopt;
}

std::optional<Unwritten> write_whole(const Output& output) {
    std::error_code trouble;
    const auto kind = fs::status(output.path, trouble).type();
    if (kind == fs::file_type::directory) return cannot_make(output.path, "this is a folder; expected a file to write");
    if (kind != fs::file_type::regular && kind != fs::file_type::not_found) {
        Descriptor file(::open(output.path.c_str(), O_WRONLY | O_CLOEXEC));
        if (!file.open()) return cannot_make(output.path, "cannot create this file");
        return write_all(file.number(), output.text) && file.close() ? std::nullopt : std::optional(cannot_fill(output.path));
    }
    // Of a link the file behind it is written.
    fs::path target = kind == fs::file_type::regular ? fs::canonical(output.path, trouble) : fs::absolute(output.path, trouble);
    if (trouble) return cannot_make(output.path, "cannot create this file");
    struct stat old {};
    const bool there = kind == fs::file_type::regular && ::stat(target.c_str(), &old) == 0;
    if (there && ::access(target.c_str(), W_OK) != 0) return cannot_make(output.path, "cannot create this file");
    constexpr mode_t anyone = 0666;
    std::string name;
    Descriptor file = beside(target, there ? old.st_mode & 07777u : anyone, name);
    if (!file.open()) return cannot_make(output.path, "cannot create this file");
    const bool written = write_all(file.number(), output.text) && ::fsync(file.number()) == 0 && file.close();
    if (written && ::rename(name.c_str(), target.c_str()) == 0) return std::nullopt;
    ::unlink(name.c_str());
    return cannot_fill(output.path);
}

}  // namespace standin::cli
