// The host tool of the build: reads and checks the knowledge folder and writes it as C++ source. A bad record fails the build.
#include <charconv>
#include <cstdio>
#include <fstream>
#include <iostream>

#include "core/files.hpp"
#include "knowledge/check.hpp"
#include "knowledge/flat.hpp"
#include "knowledge/mending.hpp"

namespace {

using namespace standin;

void print(const char* kind, const std::string& where, const std::string& message, const std::vector<std::string>& hints) {
    std::cerr << where << ": " << kind << ": " << message;
    for (const auto& hint : hints) std::cerr << " (" << hint << ")";
    std::cerr << '\n';
}

std::string number(double value) {
    char digits[32];
    const auto end = std::to_chars(digits, digits + sizeof digits, value).ptr;
    return std::string(digits, end);
}

std::string literal(std::string_view text) {
    std::string out = "\"";
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        char octal[8];
        if (c == '"' || c == '\\' || c == '?' || byte < 0x20 || byte > 0x7E) {
            std::snprintf(octal, sizeof octal, "\\%03o", static_cast<unsigned>(byte));
            out += octal;
        } else out += c;
    }
    return out + "\"";
}

// A text in pieces, for compilers that stop at long literals.
std::string pieces(std::string_view text) {
    constexpr std::size_t letters = 100;
    std::string out;
    for (std::size_t i = 0; i < text.size(); i += letters) out += "\n" + literal(text.substr(i, letters));
    return text.empty() ? "\"\"" : out;
}

std::string source_of(const FlatKnowledge& flat, const std::string& mending) {
    constexpr std::size_t columns = 12;
    std::string out =
        "#include <cstddef>\nnamespace standin::packed {\nextern const double numbers[];\nextern const std::size_t number_count;\nextern "
        "const char text[];\nextern const std::size_t text_size;\nextern const char mending[];\nextern const std::size_t "
        "mending_size;\nconst double numbers[] = {";
    for (std::size_t i = 0; i < flat.numbers.size(); ++i) out += (i % columns == 0 ? "\n" : "") + number(flat.numbers[i]) + ",";
    out += "\n};\nconst std::size_t number_count = " + std::to_string(flat.numbers.size()) + ";\nconst char text[] =" + pieces(flat.text);
    out += ";\nconst std::size_t text_size = " + std::to_string(flat.text.size()) + ";\nconst char mending[] =" + pieces(mending);
    return out + ";\nconst std::size_t mending_size = " + std::to_string(mending.size()) + ";\n}\n";
}

// The words of mending, which go in as they stand.
std::optional<std::string> mending_of(const std::string& folder, const Records& records) {
    const std::string file = folder + "/" + std::string(mending_file);
    auto text = read_file(file);
    const auto mending = text ? mending_from(*text, file) : Result<Mending>(Failure(text.error()));
    if (!mending) {
        print("error", mending.error().where, mending.error().message, mending.error().hints);
        return std::nullopt;
    }
    const auto faults = faults_in(*mending, records);
    for (const auto& fault : faults) print("error", file, fault, {});
    return faults.empty() ? std::optional(std::move(*text)) : std::nullopt;
}

}  // namespace

int main(int count, char** words) {
    if (count != 3) {
        std::cerr << "usage: knowledge_packer KNOWLEDGE_FOLDER OUTPUT.cpp\n";
        return 64;
    }
    const KnowledgeFiles files = read_knowledge_folder(words[1]);
    for (const auto& error : files.errors) print("error", error.where, error.message, error.hints);
    if (!files.errors.empty()) return 65;
    bool sound = true;
    for (const auto& finding : check_records(files.records, files.places)) {
        if (finding.error) print("error", finding.where, finding.message, finding.hints);
        sound = sound && !finding.error;
    }
    if (!sound) return 65;
    const auto mending = mending_of(words[1], files.records);
    if (!mending) return 65;
    const auto written = write_file(words[2], source_of(flatten(files.records), *mending));
    if (!written) print("error", words[2], written.error().message, {});
    return written ? 0 : 73;
}
