#include "formula/formats/bare_numbers.hpp"

#include <algorithm>
#include <cctype>

#include "formula/lexer/spaces.hpp"
#include "formula/line/line_text.hpp"

namespace standin {
namespace {

constexpr double usual_meat = 3000;       // g, where no meat is weighed. Judgement
constexpr double many_pieces = 40;        // judgement: of what weighs as much as a chile nobody counts so many
constexpr double weighs_a_piece = 5;      // g, judgement
constexpr std::size_t fewest_unsaid = 2;  // lines of foods that nobody counts

struct Bare {
    std::size_t line = 0;
    ReadLine in_grams;
    bool counted = false, absurd = false;
};

double meat_weighed(const Draft& draft, const Knowledge& knowledge) {
    double grams = 0;
    for (const auto& line : draft.lines)
        if (!line.beside && line.read && !line.read->share && knowledge.ingredient(line.read->line.ingredient)->meat)
            grams += line.read->line.grams.mid;
    return grams;
}

std::vector<Bare> bare_lines(const Draft& draft, const Knowledge& knowledge) {
    Around around;
    around.unit = unit_named("g");
    const double meat = meat_weighed(draft, knowledge), most = meat > 0 ? meat : usual_meat;
    std::vector<Bare> all;
    for (std::size_t i = 0; i < draft.lines.size(); ++i) {
        const auto& line = draft.lines[i];
        if (line.beside || !line.origin || line.base > 0 || (line.read && line.read->share)) continue;
        auto read = read_line(line.written, *line.origin, knowledge, {}, false, around);
        if (!read || !read->unit_given) continue;
        Bare bare{i, std::move(*read), line.read.has_value(), false};
        if (bare.counted) {
            const double grams = line.read->line.grams.mid, pieces = bare.in_grams.line.grams.mid;
            const double each = pieces > 0 ? grams / pieces : 0;
            bare.absurd = grams > most || (pieces >= many_pieces && each >= weighs_a_piece);
        }
        all.push_back(std::move(bare));
    }
    return all;
}

bool number_behind(const std::string& written) {
    return !written.empty() && std::isdigit(static_cast<unsigned char>(written.front())) == 0;
}

}  // namespace

void ask_of_bare_numbers(Draft& draft, const Knowledge& knowledge) {
    constexpr std::size_t shown = 3;
    if (draft.unit) return;
    auto all = bare_lines(draft, knowledge);
    const bool absurd = std::any_of(all.begin(), all.end(), [](const Bare& bare) { return bare.absurd; });
    const auto unsaid = static_cast<std::size_t>(std::count_if(all.begin(), all.end(), [](const Bare& bare) { return !bare.counted; }));
    if (!absurd && unsaid < fewest_unsaid) return;
    std::vector<std::string> lines;
    std::string where;
    for (auto& bare : all) {
        auto& line = draft.lines[bare.line];
        const bool plain_count = bare.counted && !bare.absurd && (!number_behind(line.written) || !absurd);
        if (plain_count) continue;
        if (where.empty()) where = line.where;
        lines.push_back(one_line(line.written));
        line.read = std::move(bare.in_grams);
        line.unit = unit_named("g");
    }
    std::string named;
    for (std::size_t i = 0; i < std::min(shown, lines.size()); ++i) named += (i > 0 ? ", \"" : "\"") + lines[i] + "\"";
    if (lines.size() > shown) named += " and " + std::to_string(lines.size() - shown) + " more";
    draft.troubles.add(
        {Trouble::bad_data,
         "numbers without a unit, " + named + ": are they grams? They are shown so here; say it in the title or a line above them",
         where,
         {"Quantities in g", "leek 200 g"}});
}

}  // namespace standin
