#include "formula/kitchen/kitchen_text.hpp"

#include <algorithm>
#include <map>
#include <utility>

#include "core/names.hpp"
#include "formula/kitchen/kitchen_line.hpp"
#include "formula/lexer/text_lines.hpp"
#include "formula/lexer/trouble.hpp"

namespace standin {
namespace {

// What two facts must not both tell.
std::string subject_of(const KitchenFact& fact, const std::string& food) {
    return std::to_string(static_cast<int>(fact.kind)) + "|" + food + "|" + fact.measure + "|" + fold(fact.formula) + fold(fact.called);
}

class KitchenReader {
public:
    KitchenReader(std::string_view file, const Knowledge& knowledge) : file_(file), knowledge_(knowledge) { kitchen_.file = file; }

    Result<Kitchen> read(const std::vector<TextLine>& lines) {
        for (const auto& line : lines) {
            auto read = read_kitchen_line(line, file_, knowledge_);
            if (!read) {
                troubles_.add(std::move(read.error()));
                continue;
            }
            for (auto& fact : read->facts) add(std::move(fact));
            kitchen_.notes.insert(kitchen_.notes.end(), read->notes.begin(), read->notes.end());
        }
        if (troubles_.any()) return troubles_.failure();
        return std::move(kitchen_);
    }

private:
    // A cut by its own name goes before its beast; the same told twice is a doubt that only the maker can settle.
    void add(KitchenFact fact) {
        const bool beast = fact.foods.size() > 1;
        for (const auto& food : fact.foods.empty() ? std::vector<std::string>{""} : fact.foods) {
            const std::string subject = subject_of(fact, food) + (beast ? "|all" : "");
            const auto [place, fresh] = told_.try_emplace(subject, fact.where);
            if (fresh) continue;
            troubles_.add({Trouble::bad_data, "told already at " + place->second + ": expected it once", fact.where, {}});
            return;
        }
        kitchen_.facts.push_back(std::move(fact));
    }

    std::string_view file_;
    const Knowledge& knowledge_;
    Kitchen kitchen_;
    Troubles troubles_;
    std::map<std::string, std::string> told_;
};

}  // namespace

Result<Kitchen> read_kitchen(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos) return Kitchen{std::string(file), {}, {}};
    const auto clean = readable(text, file);
    if (!clean) return Failure(clean.error());
    auto kitchen = KitchenReader(file, knowledge).read(text_lines(*clean));
    if (!kitchen) return kitchen;
    // Of a beast first, so that a cut's own fact is laid over it.
    std::stable_partition(kitchen->facts.begin(), kitchen->facts.end(), [](const KitchenFact& fact) { return fact.foods.size() > 1; });
    return kitchen;
}

bool looks_like_kitchen(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    const auto kitchen = read_kitchen(text, file, knowledge);
    return kitchen && !kitchen->facts.empty();
}

}  // namespace standin
