// Every word of every list is tried in the line that its list gives.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "adapt/variants/swap_note.hpp"
#include "core/names.hpp"
#include "formula/amounts/heading_base.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/amounts/sheet_size.hpp"
#include "formula/amounts/sheet_unit.hpp"
#include "formula/formats/formula_plain.hpp"
#include "formula/hazards/line_beside.hpp"
#include "formula/hazards/page_words.hpp"
#include "formula/line/each_of.hpp"
#include "formula/line/food_beside.hpp"
#include "formula/line/leaf_cut.hpp"
#include "formula/line/line_text.hpp"
#include "formula/line/method_facts.hpp"
#include "formula/line/several_in_line.hpp"
#include "formula/reading.hpp"
#include "knowledge/records/word_list.hpp"
#include "safety/title_words.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/places.hpp"
#include "worksheet/tasks.hpp"

using namespace standin;

namespace word_lists_test {

nlohmann::json lists() {
    std::ifstream file(std::filesystem::path(knowledge_folder()) / "lexicon/lists.json");
    return nlohmann::json::parse(file).at("lists");
}

std::string with_word(std::string line, const std::string& word) {
    const std::string place = "{word}";
    return line.replace(line.find(place), place.size(), word);
}

bool any_doubt(const ReadLine& read, const std::string& words) {
    return std::any_of(read.doubts.begin(), read.doubts.end(),
                       [&](const LineDoubt& doubt) { return in_full(doubt.what).find(words) != std::string::npos; });
}

WordList list_called(const std::string& id) {
    const auto& all = Words<WordList>::all;
    const auto* found = std::find(all.begin(), all.end(), id);
    REQUIRE(found != all.end());
    return static_cast<WordList>(found - all.begin());
}

// As a line of a formula.
std::string became_line(const std::string& line, const std::string& wanted) {
    const Origin origin("", {1, 1});
    if (wanted == "a line each") return each_of_several(line, origin, knowledge()).size() > 1 ? wanted : "one line";
    if (wanted == "beside") return !beside_the_mass(line, knowledge()) && !food_beside(line, origin, knowledge()) ? "in the mass" : wanted;
    if (wanted == "eaten raw") return TitleWords("Sausage " + line, knowledge()).words_in(WordList::eaten_raw).empty() ? "cooked" : wanted;
    if (wanted == "not fresh") return TitleWords(line, knowledge()).words_in(WordList::not_fresh).empty() ? "fresh" : wanted;
    if (wanted == "left out") return is_method_line(line, knowledge()) ? wanted : "asked";
    if (wanted.ends_with(" leaf") || wanted == "leaf as it is") {
        const auto cuts = leaf_cuts_in_method({line}, knowledge());
        const Ingredient& parsley = *knowledge().ingredient_named("parsley");
        const auto cut = std::find_if(cuts.rbegin(), cuts.rend(), [&](const auto& one) { return clause_cuts(one, parsley, knowledge()); });
        if (cut == cuts.rend()) return "leaf as it is";
        return std::string(cut->preparation == "pureed" ? "blended" : cut->preparation) + " leaf";
    }
    const Process process = process_in_method({line}, knowledge());
    if (wanted == "plate") return process.plate_mm ? wanted : "no plate";
    if (wanted == "no plate") return process.plate_mm ? "plate" : wanted;
    if (wanted == "acid first" || wanted == "salt first") {
        if (!process.order || *process.order == Order::all_together) return "no order";
        return *process.order == Order::acid_first ? "acid first" : "salt first";
    }
    if (wanted == "mixing") return process.mixing_min ? wanted : "no mixing";
    if (wanted == "no mixing") return process.mixing_min ? "mixing" : wanted;
    if (wanted == "core") return process.core_c ? wanted : "no core";
    if (wanted == "rest") return process.rest_h ? wanted : "no rest";
    const auto blanched = blanched_in_method({line}, WordList::blanching_word, knowledge());
    if (wanted == "blanched") return blanched.empty() ? "not blanched" : wanted;
    if (wanted == "squeezed") return !blanched.empty() && blanched.front().squeezed ? wanted : "not squeezed";
    if (wanted == "of the recipe") return is_said_of_recipe(line, knowledge()) ? wanted : "asked";
    if (wanted == "base") return heading_base(line, knowledge()) ? wanted : "no base";
    if (wanted == "unit") return unit_in_heading(line, knowledge()) ? wanted : "no unit";
    if (wanted == "several lines") return several_in_line(line, origin, knowledge()).size() > 1 ? wanted : "one line";
    if (wanted == "table") {
        const std::string rows = line.ends_with(",g") ? "pork shoulder,1000\nsalt,18\n" : "pork shoulder,1,kg\nsalt,18,g\n";
        const auto read = read_formula("Test\n" + line + "\n" + rows, "", knowledge());
        return read && read->lines.size() == 2 ? wanted : "no table";
    }
    if (wanted == "size") return sheet_size(line, knowledge()) ? wanted : "no size";
    if (wanted == "shares") return whole_in_words(line, knowledge()) == Whole::batch ? wanted : "no shares";
    if (wanted == "no base") return heading_base(line, knowledge()) ? "base" : wanted;
    if (wanted == "title") return is_title(line, knowledge()) ? wanted : "no title";
    if (wanted == "heading") return is_heading(line, knowledge()) ? wanted : "no heading";
    if (wanted == "method") {
        const auto read = read_closely("Test\n1 kg pork shoulder\n" + line + "\nStir in one direction for two minutes.\n", "", knowledge());
        return read && read->formula ? wanted : "asked";
    }
    if (wanted.starts_with("cook: ") || wanted.starts_with("order: ") || wanted.starts_with("mixing: ") || wanted == "refused" ||
        wanted == "nothing of the process") {
        const auto read = read_formula("Test\n1 kg pork shoulder\n" + line + "\n", "", knowledge());
        if (!read) return read.error().message.find("botulism") != std::string::npos ? "refused" : "asked: " + read.error().message;
        const auto words = process_words(read->process);
        const bool told = !read->read_as.empty();  // as it was written
        if (words.empty()) return told ? "nothing of the process" : "nothing, untold";
        return std::string(words.front().first) + ": " + words.front().second + (told ? "" : ", untold");
    }
    if (wanted == "task") return tells_what_to_do(line, knowledge()) ? wanted : "no task";
    if (wanted == "too cool") return cooked_too_cool({line}, std::nullopt, knowledge()) ? wanted : "not too cool";
    if (wanted == "not too cool") return cooked_too_cool({line}, std::nullopt, knowledge()) ? "too cool" : wanted;
    if (wanted == "held") return held_too_cool(line, knowledge()) ? wanted : "not held";
    if (wanted == "asked to add") return asks_to_add(line, knowledge()) ? wanted : "told";
    if (wanted == "links") {
        const auto read = read_formula("Garden " + line + "s\n1 kg pork shoulder\n18 g salt\n", "", knowledge());
        static const auto engine = Engine::open({});
        const auto sheet = engine->sheet(*read, {});
        return sheet && sheet->makes.titled_link ? wanted : "patties";
    }
    if (wanted == "told") {
        const auto read = read_line(line, origin, knowledge(), {}, false, {3000, true, false});
        return !read || !any_doubt(*read, "too little of it") ? wanted : "by its share";
    }
    const auto read = read_line(line, origin, knowledge());
    if (wanted == "kept") return !read || !any_doubt(*read, "passed over") ? wanted : "passed over";
    if (!read) return "asked";
    if (wanted == "meant as") return any_doubt(*read, "say which if it is another") ? wanted : "sure";
    if (wanted == "unsure") return any_doubt(*read, "counted into the mass") ? wanted : "sure";
    return read->line.ingredient;
}

// As a line of a list of what is on hand that has basil besides.
std::string became_stock(const std::string& line) {
    const auto read = read_inventory("basil 10 g\n" + line + "\n", "", knowledge());
    if (!read) return "asked: " + read.error().message;
    if (read->complete) return *read->complete ? "closed" : "open";
    if (!read->missing.empty()) return "none";
    return read->items.size() > 1 ? "some" : "nothing";
}

TEST_CASE("every word of a list does in a line what its list says", "[long]") {
    std::size_t words = 0;
    std::string missed;
    for (const auto& list : lists()) {
        const std::string id = list.at("id"), wanted = list.at("try").at("becomes");
        for (const std::string word : list.at("words")) {
            const std::string line = with_word(list.at("try").at("line"), word);
            const std::string became = id.starts_with("stock-") ? became_stock(line) : became_line(line, wanted);
            ++words;
            const bool as_said = became == wanted || (wanted == "asked" && became.starts_with("asked: "));
            if (!as_said) missed += "\n  " + id + ": " + line + ": " + became;
            CHECK(knowledge().in_list(list_called(id), fold(word)));
        }
    }
    INFO(missed);
    CHECK(missed.empty());
    CHECK(words > 700);
}

TEST_CASE("a word that no list holds is in none") {
    CHECK_FALSE(knowledge().in_list(WordList::cut, "flambeed"));
    for (const auto& tongue : knowledge().tongues()) CHECK(tongue.find(':') == std::string::npos);
}

}  // namespace word_lists_test
