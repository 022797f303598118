// What a technologist would say to a want, of a dozen formulas: golden.txt tells the formulas and, written before any of them was tried,
// what must, must not and should come first.
#include <algorithm>
#include <map>
#include <sstream>

#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/scenario.hpp"

using namespace standin;

namespace golden_test {

struct Truth {
    std::string formula, want;
    std::vector<std::string> says;
};

struct Book {
    std::map<std::string, std::string> formulas;
    std::vector<Truth> truths;
};

// "formula NAME" and its lines, "want NAME WORD" and what is said, each up to an empty line.
Book book() {
    Book all;
    std::ifstream in(test_data_folder() + "/scenarios/golden.txt");
    std::string line;
    while (std::getline(in, line)) {
        std::istringstream words(line);
        std::string what, name, want;
        words >> what >> name >> want;
        if (what != "formula" && what != "want") continue;
        std::string text = "Golden " + name + "\n";
        Truth truth{name, want, {}};
        while (std::getline(in, line) && !line.empty()) {
            text += line + "\n";
            truth.says.push_back(line);
        }
        if (what == "formula") all.formulas[name] = text;
        else all.truths.push_back(truth);
    }
    return all;
}

std::vector<std::string> split(const std::string& text, char at) {
    std::vector<std::string> parts;
    std::istringstream in(text);
    for (std::string part; std::getline(in, part, at);) parts.push_back(part);
    return parts;
}

bool is_one_of(const std::string& id, const std::vector<std::string>& foods) {
    const auto* i = knowledge().ingredient(id);
    return i && std::any_of(foods.begin(), foods.end(), [&](const std::string& food) {
               return food == id || (food.rfind("role:", 0) == 0 && word(i->roles.front()) == food.substr(5));
           });
}

// "touch FOODS", "raise FOODS", "reduce FOODS", "bring FOODS", "making"; several of them with "or" between: any will do.
bool does(const Variant& v, const std::string& what) {
    for (std::string rest = what; !rest.empty();) {
        const auto at = rest.find(" or ");
        const std::string one = rest.substr(0, at);
        rest = at == std::string::npos ? "" : rest.substr(at + 4);
        const auto space = one.find(' ');
        const std::string verb = one.substr(0, space);
        const auto foods = space == std::string::npos ? std::vector<std::string>{} : split(one.substr(space + 1), '|');
        const bool found = std::any_of(v.edits.begin(), v.edits.end(), [&](const Edit& e) {
            const bool making = e.kind == EditKind::process;
            if (verb == "making") return making;
            if (making) return false;
            const bool line = is_one_of(e.line, foods), with = is_one_of(e.with, foods);
            const bool less =
                e.kind == EditKind::reduce || e.kind == EditKind::omit || e.kind == EditKind::replace || e.kind == EditKind::split;
            if (verb == "reduce") return line && less;
            if (verb == "raise") return (line && e.kind == EditKind::raise) || with;
            if (verb == "bring") return with;
            return line || with;
        });
        if (found) return true;
    }
    return false;
}

bool met(const Variant& v) {
    return std::all_of(v.wants.begin(), v.wants.end(), [](const WantResult& w) { return w.met; });
}

std::size_t lines_touched(const Variant& v) {
    return static_cast<std::size_t>(
        std::count_if(v.edits.begin(), v.edits.end(), [](const Edit& e) { return e.kind != EditKind::process; }));
}

std::string edits_of(const AdaptAnswer& answer) {
    std::string all;
    for (const auto& v : answer.variants) {
        all += "\n  " + std::to_string(v.rank) + ":";
        for (const auto& e : v.edits)
            all += " [" + std::string(word(e.kind)) + " " + e.line + " " + std::to_string(e.grams_before) + " -> " +
                   std::to_string(e.grams_after) + " " + e.with + "]";
    }
    for (const auto& c : answer.conflict) all += "\n  conflict: " + in_full(c);
    return all;
}

bool holds(const std::string& said, const AdaptAnswer& answer) {
    if (said == "none") return answer.variants.empty() && !answer.conflict.empty();
    // The making alone may stand first where it goes most of the way.
    if (said == "met") return std::any_of(answer.variants.begin(), answer.variants.end(), met) && answer.conflict.empty();
    const auto colon = said.find(": ");
    const std::string who = said.substr(0, colon), what = said.substr(colon + 2);
    const auto fits = [&](const Variant& v) { return does(v, what); };
    if (who == "first") return !answer.variants.empty() && fits(answer.variants.front());
    if (who == "some") return std::any_of(answer.variants.begin(), answer.variants.end(), fits);
    if (who == "never") return !answer.variants.empty() && std::none_of(answer.variants.begin(), answer.variants.end(), fits);
    if (who == "few") return !answer.variants.empty() && lines_touched(answer.variants.front()) <= std::stoul(what);
    FAIL("golden.txt says \"" + said + "\", which means nothing");
    return false;
}

TEST_CASE("golden: what a technologist would say to a want", "[golden][long]") {
    auto engine = scenario::expect(Engine::open({}));
    const Book all = book();
    std::map<std::string, std::size_t> cases;
    for (const auto& truth : all.truths) {
        const auto formula = scenario::expect(engine.read_formula(all.formulas.at(truth.formula), truth.formula));
        AdaptRequest request;
        request.wants = {truth.want};
        const auto answer = scenario::expect(engine.adapt(formula, request));
        ++cases[truth.want];
        for (const auto& said : truth.says) {
            CAPTURE(truth.formula, truth.want, said, edits_of(answer));
            CHECK(holds(said, answer));
        }
    }
    for (const char* want : {"milder", "greener", "richer", "leaner", "juicier", "firmer"}) CHECK(cases[want] >= 12);
}

}  // namespace golden_test
