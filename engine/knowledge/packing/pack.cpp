// The host tool of the build: reads and checks the knowledge folder and writes it as C++ source. A bad record fails the build.
#include <charconv>
#include <cstdio>
#include <fstream>
#include <iostream>

#include "core/files.hpp"
#include "knowledge/checks/check.hpp"
#include "knowledge/packing/flat.hpp"
#include "knowledge/readers/colour_survey.hpp"
#include "knowledge/readers/mending.hpp"

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

std::string packed_text(const std::string& name, std::string_view text) {
    return "extern const char " + name + "[];\nextern const std::size_t " + name + "_size;\nconst char " + name + "[] =" + pieces(text) +
           ";\nconst std::size_t " + name + "_size = " + std::to_string(text.size()) + ";\n";
}

std::string source_of(const FlatKnowledge& flat, const std::string& mending, const std::string& colour_names) {
    constexpr std::size_t columns = 12;
    std::string out =
        "#include <cstddef>\nnamespace standin::packed {\nextern const double numbers[];\nextern const std::size_t number_count;\nconst "
        "double numbers[] = {";
    for (std::size_t i = 0; i < flat.numbers.size(); ++i) out += (i % columns == 0 ? "\n" : "") + number(flat.numbers[i]) + ",";
    out += "\n};\nconst std::size_t number_count = " + std::to_string(flat.numbers.size()) + ";\n";
    return out + packed_text("text", flat.text) + packed_text("mending", mending) + packed_text("colour_names", colour_names) + "}\n";
}

// A file that goes in as it stands, once it has been read and looked through.
template <class Read>
std::optional<std::string> text_of(const std::string& folder, std::string_view name, const Records& records, Read read) {
    const std::string file = folder + "/" + std::string(name);
    auto text = read_file(file);
    using Content = decltype(read(*text, file));
    const Content content = text ? read(*text, file) : Content(Failure(text.error()));
    if (!content) {
        print("error", content.error().where, content.error().message, content.error().hints);
        return std::nullopt;
    }
    const auto faults = faults_in(*content, records);
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
    const auto mending = text_of(words[1], mending_file, files.records, mending_from);
    const auto colour_names = text_of(words[1], colour_names_file, files.records, colour_survey_from);
    if (!mending || !colour_names) return 65;
    const auto written = write_file(words[2], source_of(flatten(files.records), *mending, *colour_names));
    if (!written) print("error", words[2], written.error().message, {});
    return written ? 0 : 73;
}
