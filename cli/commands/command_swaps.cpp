#include <algorithm>
#include <filesystem>

#include "prices.hpp"
#include "render/html/html_pages.hpp"
#include "render/json/json.hpp"
#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"
#include "render/units.hpp"
#include "saved_formula.hpp"
#include "session.hpp"
#include "standin/number_text.hpp"

namespace standin::cli {

namespace {

constexpr std::string_view in_words = "plain sausage with a usual weight of it";

// Who asks of a food and has no formula: a kilo of plain sausage with as much of it as is usual.
Result<Formula> usual_formula(const Engine& engine, const std::string& food) {
    constexpr double spoons = 10;  // g: from there on no tenths are weighed
    const auto batch = [&](const std::string& block, double grams) {
        return engine.read_formula(
            "title: " + std::string(in_words) + "\n" + trimmed_text(grams, grams < spoons ? 1 : 0) + " g " + food + "\n" + block, "");
    };
    constexpr const char* salt = "17 g table salt\n";
    auto formula = batch(salt, 1);
    if (!formula) {
        formula.error().where.clear();
        return formula;
    }
    if (formula->lines.size() != 2)
        return Failure(Error{Trouble::usage, "\"" + food + "\" is no single food: swaps takes one, or FORMULA LINE", {}, {}});
    const auto about = engine.lookup(engine.name_of(formula->lines.front().ingredient));
    const auto same = std::find_if(about.matches.begin(), about.matches.end(),
                                   [&](const IngredientFacts& one) { return one.id == formula->lines.front().ingredient; });
    if (same == about.matches.end()) return Failure(Error{Trouble::usage, "nothing is known of \"" + food + "\"", {}, {}});
    const auto usual = std::find_if(same->doses.begin(), same->doses.end(), [](const Fact& dose) { return dose.what == "usual_g_per_kg"; });
    const Role role = same->roles.front();
    const std::string lean = "800 g pork shoulder\n", fat = "200 g pork backfat\n";
    const double grams = usual == same->doses.end() ? 1 : usual->value.mid;
    constexpr double block = 500;  // g: less of a lean (liver, dried ham) goes in beside other meat
    if (role == Role::lean && grams >= block) return batch(salt, grams);
    if (role == Role::fat) return batch(lean + salt, grams);
    constexpr double is_salt = 50;  // g in 100 g
    const bool salted = std::any_of(same->composition.begin(), same->composition.end(),
                                    [&](const Fact& one) { return one.what == "salt_g" && one.value.mid > is_salt; });
    return batch(lean + fat + (salted ? "" : salt), grams);
}

// "swaps verde.txt" lacks its line; "swaps serrano" is about a food.
bool names_a_file(const std::string& word) {
    std::error_code failed;
    return word == "-" || std::filesystem::exists(word, failed) || word.ends_with(".txt") || word.ends_with(".json") ||
           word.find('/') != std::string::npos;
}

// "swaps verde.txt flat-leaf parsley", unquoted.
std::string joined(const std::vector<std::string>& words, std::size_t first) {
    std::string all;
    for (std::size_t i = first; i < words.size(); ++i) all += (i == first ? "" : " ") + words[i];
    return all;
}

std::string usual_note(const Formula& formula, const std::string& food, Units units, const Look& look) {
    return paragraph("For " + formula_weight(formula.lines.front().grams.mid, units) +
                         " in a kilo of plain sausage, a usual weight. For yours: standin swaps FORMULA " +
                         (food.find(' ') == std::string::npos ? food : "'" + food + "'"),
                     look, 0);
}

}  // namespace

int run_swaps(const Call& call) {
    auto engine = open_engine(call);
    if (!engine) return complain(engine.error(), call.colour);
    const bool by_itself = !names_a_file(call.operands.front());
    if (!by_itself && call.operands.size() == 1)
        return complain({Trouble::usage,
                         "swaps needs FORMULA LINE: for which line of " + call.operands.front() + " do you want a stand-in?",
                         {},
                         {"standin swaps " + call.operands.front() + " 2"}},
                        call.colour);
    const std::string asked = joined(call.operands, by_itself ? 0 : 1);
    const auto formula = by_itself ? usual_formula(*engine, asked) : load_formula(*engine, call.operands.front(), call);
    if (!formula) return complain(formula.error(), call.colour);
    const std::string line = by_itself ? "1" : asked;
    constexpr std::size_t usual = 12;
    const auto prices = price_list(call, *engine);
    if (!prices) return complain(prices.error(), call.colour);
    auto have = list_on_hand(call, *engine, *formula);
    if (!have) return complain(have.error(), call.colour);
    const auto answer = engine->swaps(*formula, line, {call.top.value_or(usual), std::move(*have), call.without});
    if (!answer) return complain(answer.error(), call.colour);
    if (call.take && call.save.empty())
        return complain({Trouble::usage, "--take says which stand-in to save: it needs --save FILE", {}, {}}, call.colour);
    const std::size_t take = call.take.value_or(1), there = answer->stand_ins.size();
    if (!call.save.empty() && there > 0 && take > there)
        return complain(
            {Trouble::usage, "--take " + std::to_string(take) + ": there are only " + std::to_string(there) + " stand-ins", {}, {}},
            call.colour);
    if (!call.save.empty() && there == 0)
        return complain({Trouble::unmet, "nothing known can stand in for " + answer->name + ": nothing was saved", {}, {}}, call.colour);
    const auto beside = extras_of(*engine, *formula, *prices, false);
    if (!beside) return complain(beside.error(), call.colour);
    const Detail detail{call.units.value_or(units_of(*formula)), call.full, *beside};
    Answer out;
    if (!call.save.empty()) out.saved = saved_formula(answer->stand_ins[take - 1].formula, detail.units, call.save, *engine);
    if (!call.html.empty()) out.html = swaps_html(*answer, formula->title, *engine, detail);
    out.page = call.json ? swaps_json(*answer, *engine, *beside)
                         : swaps_text(*answer, formula->title, *engine, detail, look_for_output(call.colour));
    if (by_itself && !call.json) out.page += usual_note(*formula, asked, detail.units, look_for_output(call.colour));
    return deliver(call, out, answer->stand_ins.empty() ? unmet : done);
}

}  // namespace standin::cli
