// libFuzzer drives every reader: whatever the bytes, no crash, and what was read as a formula is written and read back.
//   cmake -S . -B build-fuzz -G Ninja -DCMAKE_CXX_COMPILER=clang++ -DSTANDIN_FUZZ=ON
//   cmake --build build-fuzz --target fuzz_readers && build-fuzz/tests/fuzz/fuzz_readers -max_len=600 FOLDER_OF_TEXTS
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <iostream>
#include <string_view>

#include "formula/kitchen/kitchen_text.hpp"
#include "formula/reading.hpp"
#include "knowledge/load.hpp"
#include "knowledge/readers/reading.hpp"

using namespace standin;

namespace {

const Knowledge& knowledge() {
    static const Knowledge embedded = embedded_knowledge();
    return embedded;
}

void check(bool holds, const char* what) {
    if (holds) return;
    std::cerr << what << '\n';
    std::abort();
}

void formula(std::string_view text) {
    const auto read = read_formula(text, "fuzz.txt", knowledge());
    if (!read) return;
    check(!read->lines.empty(), "a formula without lines");
    for (const auto& line : read->lines) check(knowledge().ingredient(line.ingredient) != nullptr, "a line of nothing known");
    check(read_formula(formula_json(*read, knowledge()), "again.json", knowledge()).has_value(), "its JSON is not read back");
}

void records(std::string_view text) {
    for (const auto* as : {"rules/own.json", "ingredients/own.json", "swaps/own.json", "kinds.json", "lexicon/own.json"}) {
        KnowledgeFiles files;
        read_knowledge_file(as, text, as, files);
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    formula(text);
    (void)read_closely(text, "fuzz.txt", knowledge());
    (void)looks_like_stock(text, "fuzz.txt", knowledge());
    (void)read_inventory(text, "fuzz.txt", knowledge());
    (void)read_kitchen(text, "fuzz.txt", knowledge());
    if (size > 0 && (text.front() == '{' || text.front() == '[')) records(text);
    return 0;
}
