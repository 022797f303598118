#include "core/files.hpp"

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>

#include "core/text_limit.hpp"

namespace standin {
namespace {

Result<std::string> drain(std::istream& in, const std::string& name) {
    std::string text;
    char part[65536];
    while (in.read(part, sizeof part) || in.gcount() > 0) {
        text.append(part, static_cast<std::size_t>(in.gcount()));
        if (text.size() > longest_text) return failure(Trouble::bad_data, "longer than 16 MB", name);
    }
    return text;
}

}  // namespace

Result<std::string> read_file(const std::string& path) {
    if (path == "-") return drain(std::cin, "standard input");
    std::error_code fault;
    const auto status = std::filesystem::status(path, fault);
    if (fault || !std::filesystem::exists(status)) return failure(Trouble::not_found, "no such file", path);
    if (std::filesystem::is_directory(status)) return failure(Trouble::not_found, "is a folder, not a file", path);
    std::ifstream in(path, std::ios::binary);
    if (!in) return failure(Trouble::not_found, "cannot be opened", path);
    return drain(in, path);
}

Result<bool> write_file(const std::string& path, std::string_view text) {
    const std::string beside = path + ".part";
    std::ofstream out(beside, std::ios::binary | std::ios::trunc);
    out.write(text.data(), static_cast<std::streamsize>(text.size()));
    out.close();
    std::error_code fault;
    if (out) std::filesystem::rename(beside, path, fault);
    if (out && !fault) return true;
    std::error_code ignored;
    std::filesystem::remove(beside, ignored);
    return failure(Trouble::unwritable, "cannot be written", path);
}

}  // namespace standin
